package dev.quoin.drawing;

import dev.quoin.geometry.Affine;
import java.awt.BasicStroke;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.CSSUtilities;
import org.apache.batik.bridge.UnitProcessor;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Reads a {@code text} element into lines. A {@code tspan} with an x of its own begins a new line, as SVG editors save
 * them; one that only changes the font is a run. Used once for each text.
 */
final class TextReader {
    private static final Set<String> NOT_YET = Set.of("rotate", "textLength");

    private final Origins origins;
    private final Reporter reporter;
    private final BridgeContext context;
    private final List<LineDraft> lines = new ArrayList<>();
    private Optional<Painting> painting = Optional.empty();
    private Optional<TextPath> along = Optional.empty();
    private boolean insidePath;

    private TextReader(Origins origins, Reporter reporter, BridgeContext context) {
        this.origins = origins;
        this.reporter = reporter;
        this.context = context;
        lines.add(new LineDraft(0, 0));
    }

    /** The text in its own user units (its move is the identity); nothing if it has no letters. */
    static Optional<DrawnText> read(Element text, Origins origins, Reporter reporter, BridgeContext context) {
        return new TextReader(origins, reporter, context).read(text);
    }

    private Optional<DrawnText> read(Element text) {
        visit(text, false);
        List<TextLine> read =
                lines.stream().map(LineDraft::line).flatMap(Optional::stream).toList();
        if (read.isEmpty()) {
            return Optional.empty();
        }
        Painting paint = painting.orElse(Painting.NONE);
        double width = paint.stroke().map(BasicStroke::getLineWidth).orElse(0f);
        return Optional.of(
                new DrawnText(origins.of(text), read, Affine.IDENTITY, width, paint.filled(), along, Optional.empty()));
    }

    private void visit(Element element, boolean preserveAbove) {
        String space = element.getAttributeNS("http://www.w3.org/XML/1998/namespace", "space");
        boolean preserve = space.isEmpty() ? preserveAbove : space.equals("preserve");
        place(element);
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child.getNodeType() == Node.TEXT_NODE) {
                letters(element, child.getNodeValue(), preserve);
            } else if (child instanceof Element inner) {
                visitInner(inner, preserve);
            }
        }
    }

    private void visitInner(Element inner, boolean preserve) {
        if (inner.getLocalName().equals("textPath") && !insidePath) {
            visitPath(inner, preserve);
            return;
        }
        boolean isSpan =
                inner.getLocalName().equals("tspan") || inner.getLocalName().equals("a");
        if (!isSpan) {
            reporter.error(inner, "is not supported inside a text yet", "turn the text into paths");
        } else if (CSSUtilities.convertDisplay(inner)) {
            visit(inner, preserve);
        }
    }

    private void visitPath(Element inner, boolean preserve) {
        if (along.isPresent() || !current().isBlank()) {
            tellBeside(inner);
            return;
        }
        along = new TextPathReader(reporter, context).read(inner);
        insidePath = true;
        visit(inner, preserve);
        insidePath = false;
    }

    private void tellBeside(Element element) {
        reporter.error(
                element, "has other letters beside those along its path", "make a <text> element of each of them");
    }

    private void letters(Element element, String letters, boolean preserve) {
        VariableText content = VariableText.parse(letters);
        if (along.isPresent() && !insidePath && !WhiteSpace.isBlank(content)) {
            tellBeside(element);
        }
        current().add(TextStyle.of(element), content, preserve);
        if (!WhiteSpace.isBlank(content)) {
            TextStyle.check(element, reporter);
            paint(element);
        }
    }

    /** All letters of a text must be painted alike, since a text is one mark. */
    private void paint(Element element) {
        Painting own = Painting.of(element, reporter);
        if (own.stroke().map(BasicStroke::getDashArray).isPresent()) {
            reporter.error(element, "has dashed letters, which are not supported", "turn the text into paths");
        }
        if (painting.isPresent() && !painting.get().equals(own)) {
            reporter.error(
                    element, "is painted in another way than the text before it", "make two <text> elements of it");
        }
        painting = painting.or(() -> Optional.of(own));
    }

    private LineDraft current() {
        return lines.get(lines.size() - 1);
    }

    private void place(Element element) {
        for (String name : NOT_YET) {
            if (element.hasAttribute(name)) {
                notYet(element, name);
            }
        }
        if (insidePath) {
            tellPlaces(element);
            return;
        }
        Optional<Double> x = number(element, "x");
        Optional<Double> y = number(element, "y");
        double dx = number(element, "dx").orElse(0.0);
        double dy = number(element, "dy").orElse(0.0);
        double toY = y.orElse(current().y()) + dy;
        if (x.isPresent() && !current().isBlank()) {
            lines.add(new LineDraft(x.get() + dx, toY));
        } else if (current().isBlank()) {
            current().moveTo(x.orElse(current().x()) + dx, toY);
        } else if (dx != 0 || dy != 0) {
            notYet(element, dx == 0 ? "dy" : "dx");
        } else if (toY != current().y()) {
            reporter.error(element, "has a y but no x", "give it an x too, so that it begins a line");
        }
    }

    private void tellPlaces(Element element) {
        for (String name : List.of("x", "y", "dx", "dy")) {
            if (element.hasAttribute(name)) {
                notYet(element, name);
            }
        }
    }

    private Optional<Double> number(Element element, String name) {
        String value = element.getAttribute(name).strip();
        if (value.isEmpty()) {
            return Optional.empty();
        }
        if (value.split("[\\s,]+").length > 1) {
            reporter.error(
                    element,
                    "sets the place of each letter (" + name + "=" + Troubles.quoted(value)
                            + "), which is not supported yet",
                    "give the line one x and y, or turn the text into paths");
            return Optional.empty();
        }
        org.apache.batik.parser.UnitProcessor.Context units = UnitProcessor.createContext(context, element);
        float number = name.endsWith("x")
                ? UnitProcessor.svgHorizontalCoordinateToUserSpace(value, name, units)
                : UnitProcessor.svgVerticalCoordinateToUserSpace(value, name, units);
        return Optional.of((double) number);
    }

    private void notYet(Element element, String attribute) {
        reporter.error(
                element,
                "has " + attribute + ", which is not supported yet",
                "leave it out, or turn the text into paths");
    }
}
