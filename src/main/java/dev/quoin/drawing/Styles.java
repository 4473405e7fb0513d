package dev.quoin.drawing;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.batik.bridge.CSSUtilities;
import org.apache.batik.css.engine.CSSEngine;
import org.apache.batik.css.engine.CSSStylableElement;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Finds styles that would be passed over: those that Batik does not understand, and those of SVG 2 that move shapes. */
final class Styles {
    private static final Pattern MOVES =
            Pattern.compile("(?:^|[;{\\s])(transform|transform-origin|transform-box|translate"
                    + "|rotate|scale|x|y|width|height|cx|cy|r|rx|ry|d)\\s*:");
    private static final String FIXED_STROKE = "non-scaling-stroke";

    private final Reporter reporter;
    private final QuietAgent agent;
    private boolean sheetsChecked;

    Styles(Reporter reporter, QuietAgent agent) {
        this.reporter = reporter;
        this.agent = agent;
    }

    /** Checks the styles of an element whose style has just been computed. */
    void check(Element element) {
        boolean complained = agent.takeComplaint();
        if (!sheetsChecked) {
            sheetsChecked = true;
            checkSheets(element.getOwnerDocument());
        }
        boolean isRoot = element == element.getOwnerDocument().getDocumentElement();
        if (!isRoot) {
            checkMoves(element, element.getAttribute("style"));
        }
        if (element.getLocalName().equals("svg") && element.hasAttribute("transform")) {
            reporter.error(element, "has a transform, which is not supported there", "write it on a <g> around it");
        }
        if (element.hasAttribute("transform-origin")) {
            reporter.error(element, "has a transform-origin, which is not supported", "write it into its transform");
        }
        if (element.getAttribute("vector-effect").equals(FIXED_STROKE)) {
            tellFixedStroke(element);
        }
        if (complained) {
            tellCulprits(element);
        }
    }

    private void checkSheets(Document document) {
        NodeList sheets = document.getElementsByTagNameNS(SvgHandler.SVG, "style");
        for (int i = 0; i < sheets.getLength(); i++) {
            Element sheet = (Element) sheets.item(i);
            checkMoves(sheet, sheet.getTextContent());
        }
    }

    private void checkMoves(Element element, String style) {
        Matcher moves = MOVES.matcher(style);
        if (moves.find()) {
            reporter.error(
                    element,
                    "sets '" + moves.group(1) + "' in its style, which is not supported",
                    "write it as an attribute");
        }
        if (style.contains(FIXED_STROKE)) {
            tellFixedStroke(element);
        }
    }

    private void tellFixedStroke(Element element) {
        reporter.error(
                element, "has a stroke that is not scaled with it (vector-effect)", "set its stroke-width instead");
    }

    /** Batik passes over a style that it does not understand; here that is an error, found again to name it. */
    private void tellCulprits(Element element) {
        boolean found = tellCulprit(element);
        if (!found) {
            NodeList all = element.getOwnerDocument().getElementsByTagNameNS(SvgHandler.SVG, "*");
            for (int i = 0; i < all.getLength(); i++) {
                found |= tellCulprit((Element) all.item(i));
            }
        }
        if (!found) {
            NodeList sheets = element.getOwnerDocument().getElementsByTagNameNS(SvgHandler.SVG, "style");
            for (int i = 0; i < sheets.getLength(); i++) {
                reporter.error(
                        (Element) sheets.item(i),
                        "holds a rule that is not understood",
                        "use CSS 2 selectors, and plain colours and numbers, or move the rules to the elements");
            }
        }
    }

    private boolean tellCulprit(Element element) {
        if (!(element instanceof CSSStylableElement stylable)) {
            return false;
        }
        Optional<String> culprit = culprit(stylable, CSSUtilities.getCSSEngine(element));
        culprit.filter(what -> !what.isEmpty())
                .ifPresent(what -> reporter.error(
                        element, "has " + what + ", which is not understood", "use a plain colour, number or word"));
        return culprit.isPresent();
    }

    /** What of an element's styles is not understood; empty text where that does not matter to a drawing. */
    private Optional<String> culprit(CSSStylableElement element, CSSEngine engine) {
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            Node attribute = attributes.item(i);
            String name = attribute.getNodeName();
            String value = ((Attr) attribute).getValue();
            if (name.equals("style")) {
                Optional<String> declaration = declaration(element, engine, value);
                if (declaration.isPresent()) {
                    return declaration;
                }
            } else if (engine.getPropertyIndex(name) >= 0) {
                engine.parsePropertyValue(element, name, value);
                if (agent.takeComplaint()) {
                    return Optional.of(name + "=" + Troubles.quoted(value));
                }
            }
        }
        return Optional.empty();
    }

    private Optional<String> declaration(CSSStylableElement element, CSSEngine engine, String style) {
        engine.parseStyleDeclaration(element, style);
        if (!agent.takeComplaint()) {
            return Optional.empty();
        }
        for (String declaration : style.split(";", -1)) {
            String property = declaration.contains(":")
                    ? declaration.substring(0, declaration.indexOf(':')).strip()
                    : declaration;
            boolean known = engine.getPropertyIndex(property) >= 0 || engine.getShorthandIndex(property) >= 0;
            engine.parseStyleDeclaration(element, declaration);
            if (agent.takeComplaint() && known) {
                return Optional.of("'" + declaration.strip() + "' in its style");
            }
        }
        return Optional.of("");
    }
}
