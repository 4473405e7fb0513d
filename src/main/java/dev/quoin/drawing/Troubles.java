package dev.quoin.drawing;

import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.BridgeException;
import org.apache.batik.bridge.ErrorConstants;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;

/** Says in our own words why an element cannot be drawn. */
final class Troubles {
    private static final int LONGEST_VALUE = 60;

    private final Reporter reporter;

    Troubles(Reporter reporter) {
        this.reporter = reporter;
    }

    void unsupported(Element element) {
        String remedy = element.getLocalName().startsWith("flow")
                ? "turn it into plain text, or into paths"
                : "turn it into shapes, paths or text";
        reporter.error(element, "is no shape that can be marked", remedy);
    }

    /** Whether a {@code use} refers to an element of this drawing; an error if not. */
    boolean leadsInside(Element use, BridgeContext context) {
        String href = use.getAttributeNS(SvgHandler.XLINK, "href");
        if (!href.startsWith("#")) {
            String what = href.isEmpty() ? "has no href" : "refers to another file, " + quoted(href);
            reporter.error(use, what, "refer to an element of this drawing by href=\"#its-id\"");
            return false;
        }
        if (context.getDocument().getElementById(href.substring(1)) == null) {
            reporter.error(use, "refers to " + quoted(href) + ", which is not in the drawing", "correct its href");
            return false;
        }
        return true;
    }

    void tell(Element element, BridgeException e) {
        Element culprit = e.getElement() == null ? element : e.getElement();
        String attribute = attributeOf(culprit, e);
        String value = attribute.isEmpty() ? "" : culprit.getAttribute(attribute);
        switch (e.getCode() == null ? "" : e.getCode()) {
            case ErrorConstants.ERR_ATTRIBUTE_MISSING ->
                reporter.warning(
                        culprit, "draws nothing, since it has no " + attribute, "give it one, or delete the element");
            case ErrorConstants.ERR_LENGTH_NEGATIVE ->
                reporter.error(culprit, "has " + attribute + "=" + quoted(value) + ", below 0", "write a size above 0");
            case ErrorConstants.ERR_ATTRIBUTE_VALUE_MALFORMED ->
                reporter.error(
                        culprit,
                        "has " + attribute + "=" + quoted(value) + ", which is "
                                + (attribute.equals("d") ? e.getMessage() : "not understood"),
                        "correct that value");
            default -> tell(culprit, (RuntimeException) e);
        }
    }

    void tell(Element element, RuntimeException e) {
        // Batik begins its messages with a line of its own about the file.
        String reason = String.valueOf(e.getMessage()).lines().reduce("", (before, last) -> last);
        reporter.error(element, "cannot be drawn: " + reason, "draw it in another way");
    }

    static String quoted(String value) {
        String shown = value.length() <= LONGEST_VALUE ? value : value.substring(0, LONGEST_VALUE) + "...";
        return "\"" + shown + "\"";
    }

    /** Batik keeps the attribute's name to itself, but writes it into its message in quotes. */
    private static String attributeOf(Element element, BridgeException e) {
        String message = String.valueOf(e.getMessage());
        if (message.startsWith("not path data")) {
            return "d";
        }
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            Attr attribute = (Attr) attributes.item(i);
            if (message.contains("\"" + attribute.getName() + "\"")) {
                return attribute.getName();
            }
        }
        int open = message.indexOf("attribute \"");
        int close = message.indexOf('"', open + 11);
        return open < 0 || close < 0 ? "" : message.substring(open + 11, close);
    }
}
