package dev.quoin.paper;

import org.w3c.dom.Element;

/**
 * How an element of a picture is painted: SVG's presentation attributes, as far as papers' pictures use them.
 *
 * @param fill {@code none}, {@code #rgb}, {@code #rrggbb} or the name of a hatch
 * @param stroke likewise, but no hatch
 * @param color what {@code currentColor} stands for
 * @param dash lengths of lines and gaps; empty for a whole line
 * @param size of the font
 */
record SketchStyle(
        String fill,
        String stroke,
        String color,
        double strokeWidth,
        String dash,
        double size,
        boolean bold,
        boolean middle,
        boolean evenOdd) {
    static final SketchStyle PLAIN = new SketchStyle("#000", "none", "#000", 1, "", 1, false, false, false);

    /** The style of an element inside one of this style. */
    SketchStyle of(Element element) {
        String own = attribute(element, "color", color);
        return new SketchStyle(
                attribute(element, "fill", fill).replace("currentColor", own),
                attribute(element, "stroke", stroke).replace("currentColor", own),
                own,
                Double.parseDouble(attribute(element, "stroke-width", Double.toString(strokeWidth))),
                attribute(element, "stroke-dasharray", dash),
                Double.parseDouble(attribute(element, "font-size", Double.toString(size))),
                attribute(element, "font-weight", bold ? "bold" : "").equals("bold"),
                attribute(element, "text-anchor", middle ? "middle" : "").equals("middle"),
                attribute(element, "fill-rule", evenOdd ? "evenodd" : "").equals("evenodd"));
    }

    private static String attribute(Element element, String name, String inherited) {
        return element.hasAttribute(name) ? element.getAttribute(name) : inherited;
    }
}
