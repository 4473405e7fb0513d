package dev.quoin.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.batik.bridge.CSSUtilities;
import org.apache.batik.css.engine.SVGCSSEngine;
import org.apache.batik.css.engine.value.Value;
import org.w3c.dom.Element;
import org.w3c.dom.css.CSSPrimitiveValue;
import org.w3c.dom.css.CSSValue;

/** The CSS of text: the font that it asks for, and what is not supported of the rest. */
record TextStyle(FontRequest font, double size, TextAnchor anchor) {
    /** A property, and the words at which text is set as usual; a number must be 0. */
    private record Plain(int property, String name, Set<String> words) {}

    private static final List<Plain> PLAIN = List.of(
            new Plain(SVGCSSEngine.LETTER_SPACING_INDEX, "letter-spacing", Set.of("normal")),
            new Plain(SVGCSSEngine.WORD_SPACING_INDEX, "word-spacing", Set.of("normal")),
            new Plain(SVGCSSEngine.BASELINE_SHIFT_INDEX, "baseline-shift", Set.of("baseline")),
            new Plain(SVGCSSEngine.TEXT_DECORATION_INDEX, "text-decoration", Set.of("none")),
            new Plain(SVGCSSEngine.WRITING_MODE_INDEX, "writing-mode", Set.of("lr", "lr-tb")),
            new Plain(SVGCSSEngine.DIRECTION_INDEX, "direction", Set.of("ltr")),
            new Plain(
                    SVGCSSEngine.DOMINANT_BASELINE_INDEX,
                    "dominant-baseline",
                    Set.of("auto", "alphabetic", "use-script", "no-change", "reset-size")),
            new Plain(
                    SVGCSSEngine.ALIGNMENT_BASELINE_INDEX,
                    "alignment-baseline",
                    Set.of("auto", "baseline", "alphabetic")),
            new Plain(SVGCSSEngine.FONT_VARIANT_INDEX, "font-variant", Set.of("normal")),
            new Plain(SVGCSSEngine.FONT_STRETCH_INDEX, "font-stretch", Set.of("normal")));

    private static final int NORMAL = 400;
    private static final int BOLD = 700;

    static TextStyle of(Element element) {
        return new TextStyle(
                new FontRequest(families(element), weight(element), isItalic(element)),
                CSSUtilities.getComputedStyle(element, SVGCSSEngine.FONT_SIZE_INDEX)
                        .getFloatValue(),
                anchor(element));
    }

    /** Tells what of an element's style is not supported. */
    static void check(Element element, Reporter reporter) {
        for (Plain plain : PLAIN) {
            Value value = CSSUtilities.getComputedStyle(element, plain.property());
            if (!isPlain(value, plain.words())) {
                reporter.error(
                        element,
                        "sets " + plain.name() + ": " + value.getCssText() + ", which is not supported yet",
                        "leave it out, or turn the text into paths");
            }
        }
    }

    private static boolean isPlain(Value value, Set<String> words) {
        if (value.getCssValueType() != CSSValue.CSS_PRIMITIVE_VALUE) {
            return false;
        }
        return value.getPrimitiveType() == CSSPrimitiveValue.CSS_IDENT
                ? words.contains(value.getStringValue())
                : value.getFloatValue() == 0;
    }

    private static List<String> families(Element element) {
        Value list = CSSUtilities.getComputedStyle(element, SVGCSSEngine.FONT_FAMILY_INDEX);
        if (list.getCssValueType() != CSSValue.CSS_VALUE_LIST) {
            return List.of(list.getStringValue());
        }
        List<String> families = new ArrayList<>();
        for (int i = 0; i < list.getLength(); i++) {
            families.add(list.item(i).getStringValue());
        }
        return List.copyOf(families);
    }

    private static int weight(Element element) {
        Value value = CSSUtilities.getComputedStyle(element, SVGCSSEngine.FONT_WEIGHT_INDEX);
        if (value.getPrimitiveType() == CSSPrimitiveValue.CSS_IDENT) {
            return value.getStringValue().equals("bold") ? BOLD : NORMAL;
        }
        return Math.round(value.getFloatValue());
    }

    private static boolean isItalic(Element element) {
        return !CSSUtilities.getComputedStyle(element, SVGCSSEngine.FONT_STYLE_INDEX)
                .getStringValue()
                .equals("normal");
    }

    private static TextAnchor anchor(Element element) {
        String word = CSSUtilities.getComputedStyle(element, SVGCSSEngine.TEXT_ANCHOR_INDEX)
                .getStringValue();
        return switch (word) {
            case "middle" -> TextAnchor.MIDDLE;
            case "end" -> TextAnchor.END;
            default -> TextAnchor.START;
        };
    }
}
