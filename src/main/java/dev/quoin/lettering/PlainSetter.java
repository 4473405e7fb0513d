package dev.quoin.lettering;

import dev.quoin.lettering.OutlineTypeface.Drawn;
import dev.quoin.lettering.OutlineTypeface.OpenFont;
import java.awt.font.FontRenderContext;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;

/** Sets plain Latin text in a font, pair by pair, without asking the shaper for more than its pairs. */
final class PlainSetter {
    private final IntFunction<Drawn> outlines;
    private final int[] glyphs;
    private final PairAdvances latin;
    private final PairAdvances common;
    private final double em;

    private PlainSetter(
            OpenFont font, FontRenderContext context, Map<String, ByteBuffer> tables, IntFunction<Drawn> outlines) {
        int[] all = PairAdvances.cmap(font.font(), context);
        BitSet set = new BitSet();
        Arrays.stream(all).filter(glyph -> glyph >= 0).forEach(set::set);
        GlyphContexts contexts = new GlyphContexts(set, tables);
        this.glyphs = Arrays.stream(all)
                .map(glyph -> glyph >= 0 && contexts.mayBeginAt(glyph) ? -1 : glyph)
                .toArray();
        this.outlines = outlines;
        this.latin = new PairAdvances(font.font(), context, glyphs, contexts, 'n');
        this.common = new PairAdvances(font.font(), context, glyphs, contexts, '0');
        this.em = 1.0 / font.units();
    }

    /**
     * Of a font; empty if its rules are not known or not sound.
     *
     * @param outlines gives the outline of a glyph
     */
    static Optional<PlainSetter> of(OpenFont font, FontRenderContext context, IntFunction<Drawn> outlines) {
        try {
            return font.layout().map(tables -> new PlainSetter(font, context, tables, outlines));
        } catch (IndexOutOfBoundsException unsound) {
            return Optional.empty();
        }
    }

    /** The glyphs of the text; empty if it is not plain, or a character of it shows nothing. */
    Optional<GlyphRun> set(String text) {
        int length = text.length();
        PairAdvances pairs = common;
        for (int i = 0; i < length; i++) {
            char c = text.charAt(i);
            int index = PlainLatin.index(c);
            if (index < 0 || glyphs[index] < 0) {
                return Optional.empty();
            }
            if (PlainLatin.isLetter(c)) {
                pairs = latin;
            }
        }
        List<GlyphRun.Glyph> run = new ArrayList<>(length);
        // The shaper adds up in this precision, and so must this.
        float pen = 0;
        for (int i = 0; i < length; i++) {
            char c = text.charAt(i);
            int index = PlainLatin.index(c);
            Drawn drawn = outlines.apply(glyphs[index]);
            float step =
                    i + 1 < length ? pairs.between(index, PlainLatin.index(text.charAt(i + 1))) : pairs.after(index);
            if (Float.isInfinite(step) || (drawn.outline().isEmpty() && c != ' ')) {
                return Optional.empty();
            }
            run.add(new GlyphRun.Glyph(drawn.outline(), drawn.ink(), pen * em, 0, i, false));
            pen += step;
        }
        return Optional.of(new GlyphRun(run, pen * em));
    }
}
