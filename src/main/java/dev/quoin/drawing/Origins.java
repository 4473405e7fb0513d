package dev.quoin.drawing;

import dev.quoin.problem.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.batik.css.engine.CSSEngine;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Says of an element of the document which of the file it is, and what stands above it. */
record Origins(SvgDom dom, Merge merge) {
    /** The element as the other packages know it. */
    dev.quoin.drawing.Element of(Element element) {
        Optional<SvgElement> origin = dom.origin(element);
        List<Names> names = new ArrayList<>();
        List<dev.quoin.drawing.Element> conditions = new ArrayList<>();
        for (Node above = element; above != null; above = CSSEngine.getCSSParentNode(above)) {
            if (above instanceof Element named) {
                Optional<SvgElement> source = dom.origin(named);
                source.map(merge::names).ifPresent(names::add);
                source.filter(held -> above(held, origin))
                        .map(Origins::unmerged)
                        .filter(held -> held.data("when").isPresent())
                        .ifPresent(conditions::add);
            }
        }
        return new dev.quoin.drawing.Element(
                element.getLocalName(),
                origin.map(SvgElement::place).orElse(Place.of("")),
                List.copyOf(names),
                origin.map(Origins::data).orElse(Map.of()),
                List.copyOf(conditions));
    }

    private static boolean above(SvgElement held, Optional<SvgElement> own) {
        return own.isEmpty() || held != own.get();
    }

    /** The element of the file, its own variable names left out. */
    static dev.quoin.drawing.Element unmerged(SvgElement element) {
        List<Names> names = new ArrayList<>();
        for (Optional<SvgElement> above = Optional.of(element);
                above.isPresent();
                above = above.get().parent()) {
            names.add(Merge.NONE.names(above.get()));
        }
        return new dev.quoin.drawing.Element(element.tag(), element.place(), List.copyOf(names), data(element));
    }

    private static Map<String, VariableText> data(SvgElement element) {
        Map<String, VariableText> data = new LinkedHashMap<>();
        for (SvgAttribute attribute : element.attributes()) {
            if (attribute.isData()) {
                data.put(attribute.dataName(), attribute.value());
            }
        }
        return data;
    }
}
