package dev.quoin.drawing;

import java.awt.BasicStroke;
import java.util.Optional;
import org.apache.batik.bridge.CSSUtilities;
import org.apache.batik.bridge.PaintServer;
import org.apache.batik.css.engine.SVGCSSEngine;
import org.apache.batik.css.engine.value.Value;
import org.w3c.dom.Element;
import org.w3c.dom.css.CSSPrimitiveValue;
import org.w3c.dom.css.CSSValue;

/**
 * How an element is painted.
 *
 * @param filled whether its interior is
 * @param stroke how its outline is, in its user units; empty where it is not
 */
record Painting(boolean filled, Optional<BasicStroke> stroke) {
    static final Painting NONE = new Painting(false, Optional.empty());

    static Painting of(Element element, Reporter reporter) {
        if (!CSSUtilities.convertVisibility(element)) {
            return NONE;
        }
        boolean filled = isPainted(element, SVGCSSEngine.FILL_INDEX, SVGCSSEngine.FILL_OPACITY_INDEX, reporter);
        if (!isPainted(element, SVGCSSEngine.STROKE_INDEX, SVGCSSEngine.STROKE_OPACITY_INDEX, reporter)) {
            return new Painting(filled, Optional.empty());
        }
        return new Painting(filled, stroke(element, reporter));
    }

    private static boolean isPainted(Element element, int paint, int opacity, Reporter reporter) {
        String what = paint == SVGCSSEngine.FILL_INDEX ? "fill" : "stroke";
        Value colour = CSSUtilities.getComputedStyle(element, paint);
        if (isNone(colour)) {
            return false;
        }
        float opaque = CSSUtilities.getComputedStyle(element, opacity).getFloatValue();
        if (opaque <= 0) {
            return false;
        }
        if (opaque < 1) {
            reporter.error(element, "has a see-through " + what, "give it full opacity, or none at all");
        }
        if (isGradient(colour)) {
            reporter.error(
                    element,
                    "has a gradient or pattern as its " + what + ", which cannot be marked",
                    "use one plain colour, or draw the pattern with shapes");
        }
        return true;
    }

    private static boolean isNone(Value colour) {
        return colour.getCssValueType() == CSSValue.CSS_PRIMITIVE_VALUE
                && colour.getPrimitiveType() == CSSPrimitiveValue.CSS_IDENT
                && colour.getStringValue().equals("none");
    }

    private static boolean isGradient(Value colour) {
        return Effects.isReference(colour)
                || (colour.getCssValueType() == CSSValue.CSS_VALUE_LIST && Effects.isReference(colour.item(0)));
    }

    private static Optional<BasicStroke> stroke(Element element, Reporter reporter) {
        float width = CSSUtilities.getComputedStyle(element, SVGCSSEngine.STROKE_WIDTH_INDEX)
                .getFloatValue();
        if (!(width > 0)) {
            return Optional.empty();
        }
        try {
            return Optional.ofNullable((BasicStroke) PaintServer.convertStroke(element));
        } catch (IllegalArgumentException e) {
            reporter.error(element, "has dashes that cannot be drawn", "use dash lengths of 0 and above");
            return Optional.empty();
        }
    }
}
