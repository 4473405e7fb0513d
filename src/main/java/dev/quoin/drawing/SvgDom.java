package dev.quoin.drawing;

import dev.quoin.geometry.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.w3c.dom.DOMException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A drawing as the document that Batik draws. Its elements, and their clones, know where they come from. */
final class SvgDom {
    private static final String OWN = "urn:quoin";
    private static final String INDEX = "quoin:index";
    /** The root's frame is laid on the page by us, more exactly than in Batik's single precision. */
    private static final Set<String> FRAME = Set.of("x", "y", "width", "height", "viewBox", "preserveAspectRatio");

    private final Document document;
    private final List<SvgElement> elements = new ArrayList<>();
    private final Merge merge;
    private final Predicate<SvgElement> kept;

    private SvgDom(Document document, Merge merge, Predicate<SvgElement> kept) {
        this.document = document;
        this.merge = merge;
        this.kept = kept;
    }

    /** Builds the document of those elements that are kept. Its root's user units are those of the file. */
    static SvgDom build(SvgElement root, Box viewBox, Merge merge, Predicate<SvgElement> kept, QuietAgent agent) {
        SvgDom dom = new SvgDom(new DrawingImplementation(agent).newDocument(), merge, kept);
        Element svg = dom.document.getDocumentElement();
        dom.fill(svg, root);
        String width = String.valueOf(viewBox.width());
        String height = String.valueOf(viewBox.height());
        svg.setAttributeNS(null, "width", width);
        svg.setAttributeNS(null, "height", height);
        svg.setAttributeNS(null, "viewBox", "0 0 " + width + " " + height);
        return dom;
    }

    Document document() {
        return document;
    }

    /** Which element of the file an element of the document, or a clone of one, comes from. */
    Optional<SvgElement> origin(Element element) {
        String index = element.getAttributeNS(OWN, "index");
        return index.isEmpty() ? Optional.empty() : Optional.of(elements.get(Integer.parseInt(index)));
    }

    private void fill(Element target, SvgElement source) {
        target.setAttributeNS(OWN, INDEX, String.valueOf(elements.size()));
        elements.add(source);
        for (SvgAttribute attribute : source.attributes()) {
            boolean isFrame = source.parent().isEmpty() && FRAME.contains(attribute.name());
            if (!attribute.isData() && !isFrame) {
                merge.value(attribute).ifPresent(value -> set(target, attribute, value));
            }
        }
        if (source.tag().equals("ellipse")) {
            roundOff(target);
        }
        for (SvgContent child : source.content()) {
            if (child instanceof SvgText text) {
                target.appendChild(document.createTextNode(text.text()));
            } else if (child instanceof SvgElement element && kept.test(element)) {
                Element made = create(element.tag());
                target.appendChild(made);
                fill(made, element);
            }
        }
    }

    /** SVG 2, section 10.4: an ellipse with one radius is a circle. */
    private static void roundOff(Element ellipse) {
        boolean x = ellipse.hasAttribute("rx");
        boolean y = ellipse.hasAttribute("ry");
        boolean percent = (ellipse.getAttribute("rx") + ellipse.getAttribute("ry")).contains("%");
        if (x != y && !percent) {
            ellipse.setAttributeNS(null, x ? "ry" : "rx", ellipse.getAttribute(x ? "rx" : "ry"));
        }
    }

    private Element create(String tag) {
        try {
            return document.createElementNS(SvgHandler.SVG, tag);
        } catch (DOMException e) {
            // Not of SVG 1.1: it is kept under a name that nothing draws, so that it is told and not lost.
            return document.createElementNS(OWN, tag);
        }
    }

    /** Batik knows SVG 1.1's {@code xlink:href} only; SVG 2's {@code href} wins over it. */
    private static void set(Element target, SvgAttribute attribute, String value) {
        String local = attribute.localName();
        if (attribute.namespace().equals(SvgHandler.XLINK) && !local.equals("href")) {
            return;
        }
        if (local.equals("href")) {
            if (attribute.namespace().isEmpty() || !target.hasAttributeNS(SvgHandler.XLINK, "href")) {
                target.setAttributeNS(SvgHandler.XLINK, "xlink:href", value.strip());
            }
        } else if (attribute.namespace().isEmpty()) {
            target.setAttributeNS(null, attribute.name(), value);
        } else {
            target.setAttributeNS(attribute.namespace(), attribute.name(), value);
        }
    }
}
