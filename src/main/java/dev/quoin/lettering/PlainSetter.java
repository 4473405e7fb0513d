package dev.quoin.lettering;

import dev.quoin.lettering.OutlineTypeface.Drawn;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sets plain Latin text pair by pair, without asking the shaper. */
final class PlainSetter {
    private PlainSetter() {}

    /** The glyphs of the text; empty if it is not plain, or a character of it shows nothing. */
    static Optional<GlyphRun> set(String text, PlainFont font) {
        int length = text.length();
        PlainScript script = PlainScript.COMMON;
        for (int i = 0; i < length; i++) {
            char c = text.charAt(i);
            int index = PlainLatin.index(c);
            if (index < 0 || !font.has(index)) {
                return Optional.empty();
            }
            if (PlainLatin.isLetter(c)) {
                script = PlainScript.LATIN;
            }
        }
        double unit = font.unit();
        List<GlyphRun.Glyph> run = new ArrayList<>(length);
        // The shaper adds up in this precision, and so must this.
        float pen = 0;
        for (int i = 0; i < length; i++) {
            char c = text.charAt(i);
            int index = PlainLatin.index(c);
            Drawn drawn = font.drawn(index);
            float step = i + 1 < length
                    ? font.between(index, PlainLatin.index(text.charAt(i + 1)), script)
                    : font.after(index, script);
            if (Float.isInfinite(step) || (drawn.outline().isEmpty() && c != ' ')) {
                return Optional.empty();
            }
            run.add(new GlyphRun.Glyph(drawn.outline(), drawn.ink(), pen * unit, 0, i, false));
            pen += step;
        }
        return Optional.of(new GlyphRun(run, pen * unit));
    }
}
