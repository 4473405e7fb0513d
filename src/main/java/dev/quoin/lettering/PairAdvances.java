package dev.quoin.lettering;

import dev.quoin.lettering.OutlineTypeface.OpenFont;
import java.awt.Font;
import java.awt.font.GlyphVector;
import java.util.Arrays;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * How far apart two plain characters stand in a font, asked of the platform's shaper once a pair. The answers hold in any
 * text of such characters in which no pair is out of the plain: no glyph there depends on more than its neighbour.
 *
 * <p>Each pair is laid out behind the lead character of its script. Safe for use by several threads, which may both ask for a pair and get the same answer.
 */
final class PairAdvances {
    private static final float UNKNOWN = Float.NaN;

    private final Font font;
    private final int[] glyphs;
    private final GlyphContexts contexts;
    private final PlainScript script;
    private final AtomicReferenceArray<float[]> advances = new AtomicReferenceArray<>(PlainLatin.COUNT);
    private final Single[] singles = new Single[PlainLatin.COUNT];

    /**
     * Of a font, ready to lay out.
     *
     * @param glyphs by the index of the character; -1 for those that are never plain in this font
     * @param contexts tells where pairs do not tell all
     */
    PairAdvances(Font font, int[] glyphs, GlyphContexts contexts, PlainScript script) {
        this.font = font;
        this.glyphs = glyphs;
        this.contexts = contexts;
        this.script = script;
    }

    /** The glyph of each plain character, -1 where the font has none. */
    static int[] cmap(Font font) {
        int[] glyphs = new int[PlainLatin.COUNT];
        for (int i = 0; i < glyphs.length; i++) {
            char c = PlainLatin.character(i);
            boolean has = PlainLatin.index(c) == i && font.canDisplay(c);
            glyphs[i] = has
                    ? font.createGlyphVector(OpenFont.UNHINTED, new char[] {c}).getGlyphCode(0)
                    : -1;
        }
        return glyphs;
    }

    /** From a character to the next, in the font's units; infinite if the two are not plain together. */
    float between(int first, int second) {
        float[] row = advances.get(first);
        if (row == null) {
            row = new float[PlainLatin.COUNT];
            Arrays.fill(row, UNKNOWN);
            advances.set(first, row);
        }
        float known = row[second];
        if (Float.isNaN(known)) {
            known = ask(first, second);
            row[second] = known;
        }
        return known;
    }

    /** From a character to where the text ends; infinite if it is not plain. */
    float after(int last) {
        return single(last).advance;
    }

    private float ask(int first, int second) {
        Single one = single(first);
        Single two = single(second);
        if (one.advance == PlainFont.NOT_PLAIN
                || two.advance == PlainFont.NOT_PLAIN
                || contexts.mayBeginWith(glyphs[first], glyphs[second])) {
            return PlainFont.NOT_PLAIN;
        }
        float[] x = layOut(script.lead(), PlainLatin.character(first), PlainLatin.character(second));
        boolean plain = x.length == 4 && x[1] == one.x && x[3] - x[2] == two.advance;
        return plain ? x[2] - x[1] : PlainFont.NOT_PLAIN;
    }

    private Single single(int index) {
        Single known = singles[index];
        if (known == null) {
            float[] x = layOut(script.lead(), PlainLatin.character(index));
            known = x.length == 3 ? new Single(x[1], x[2] - x[1]) : new Single(0, PlainFont.NOT_PLAIN);
            singles[index] = known;
        }
        return known;
    }

    /** Where each glyph stands, and the end; nothing if any is not the character's own, on the baseline, in its turn. */
    private float[] layOut(char... text) {
        GlyphVector laidOut =
                font.layoutGlyphVector(OpenFont.UNHINTED, text, 0, text.length, Font.LAYOUT_LEFT_TO_RIGHT);
        if (laidOut.getNumGlyphs() != text.length) {
            return new float[0];
        }
        float[] at = laidOut.getGlyphPositions(0, text.length + 1, null);
        float[] x = new float[text.length + 1];
        for (int i = 0; i <= text.length; i++) {
            boolean own = i == text.length
                    || (laidOut.getGlyphCode(i) == glyphs[PlainLatin.index(text[i])]
                            && laidOut.getGlyphCharIndex(i) == i);
            if (!own || at[2 * i + 1] != 0) {
                return new float[0];
            }
            x[i] = at[2 * i];
        }
        return x;
    }

    /** Where a character stands behind the lead, and its own advance. */
    private record Single(float x, float advance) {}
}
