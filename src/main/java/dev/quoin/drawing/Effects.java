package dev.quoin.drawing;

import java.util.Map;
import org.apache.batik.bridge.CSSUtilities;
import org.apache.batik.css.engine.SVGCSSEngine;
import org.apache.batik.css.engine.value.Value;
import org.apache.batik.util.SVGConstants;
import org.w3c.dom.Element;
import org.w3c.dom.css.CSSPrimitiveValue;

/** Finds what a beam cannot do: see-through paint, blur, and the like, on shapes and on groups. */
final class Effects {
    private static final Map<Integer, String> NOT_YET = Map.of(
            SVGCSSEngine.FILTER_INDEX, "filter",
            SVGCSSEngine.MASK_INDEX, "mask");
    private static final Map<Integer, String> MARKERS = Map.of(
            SVGCSSEngine.MARKER_START_INDEX, "marker-start",
            SVGCSSEngine.MARKER_MID_INDEX, "marker-mid",
            SVGCSSEngine.MARKER_END_INDEX, "marker-end");

    private final Reporter reporter;

    Effects(Reporter reporter) {
        this.reporter = reporter;
    }

    void check(Element element) {
        if (CSSUtilities.getComputedStyle(element, SVGCSSEngine.OPACITY_INDEX).getFloatValue() < 1) {
            reporter.error(element, "is see-through (opacity below 1)", "give it full opacity, or delete it");
        }
        NOT_YET.forEach((property, name) -> {
            if (isReference(CSSUtilities.getComputedStyle(element, property))) {
                reporter.error(element, "has a " + name + ", which cannot be marked", "apply it in the editor");
            }
        });
        if (takesMarkers(element)) {
            MARKERS.forEach((property, name) -> {
                if (isReference(CSSUtilities.getComputedStyle(element, property))) {
                    reporter.error(element, "has a " + name + ", which cannot be marked", "turn it into a path");
                }
            });
        }
    }

    static boolean isReference(Value value) {
        return value.getCssValueType() == CSSPrimitiveValue.CSS_PRIMITIVE_VALUE
                && value.getPrimitiveType() == CSSPrimitiveValue.CSS_URI;
    }

    private static boolean takesMarkers(Element element) {
        return switch (element.getLocalName()) {
            case SVGConstants.SVG_PATH_TAG,
                    SVGConstants.SVG_LINE_TAG,
                    SVGConstants.SVG_POLYLINE_TAG,
                    SVGConstants.SVG_POLYGON_TAG -> true;
            default -> false;
        };
    }
}
