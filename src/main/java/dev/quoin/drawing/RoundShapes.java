package dev.quoin.drawing;

import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.UnitProcessor;
import org.w3c.dom.Element;

/** Radii of rectangles and ellipses. */
final class RoundShapes {
    private RoundShapes() {}

    /**
     * Where only one radius is given, the other is the same length (SVG 2, 10.2 and 10.4). Batik takes over the attribute,
     * which in per cent is another length in the other direction; so it is given the length.
     */
    static void settleRadii(Element element, BridgeContext context) {
        boolean isRound =
                element.getLocalName().equals("rect") || element.getLocalName().equals("ellipse");
        if (isRound && element.hasAttribute("rx") != element.hasAttribute("ry")) {
            String given = element.hasAttribute("rx") ? "rx" : "ry";
            String value = element.getAttribute(given);
            if (value.contains("%")) {
                String length = String.valueOf(length(given, value, UnitProcessor.createContext(context, element)));
                element.setAttribute("rx", length);
                element.setAttribute("ry", length);
            }
        }
    }

    private static float length(String name, String value, org.apache.batik.parser.UnitProcessor.Context context) {
        return name.equals("rx")
                ? UnitProcessor.svgHorizontalLengthToUserSpace(value, name, context)
                : UnitProcessor.svgVerticalLengthToUserSpace(value, name, context);
    }
}
