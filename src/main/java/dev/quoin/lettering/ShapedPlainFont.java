package dev.quoin.lettering;

import dev.quoin.lettering.OutlineTypeface.Drawn;
import dev.quoin.lettering.OutlineTypeface.OpenFont;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;

/** Asks the platform's shaper for what plain text needs, once each. */
final class ShapedPlainFont implements PlainFont {
    private final IntFunction<Drawn> outlines;
    private final int[] glyphs;
    private final PairAdvances latin;
    private final PairAdvances common;
    private final double unit;

    private ShapedPlainFont(OpenFont font, Map<String, ByteBuffer> tables, IntFunction<Drawn> outlines) {
        int[] all = PairAdvances.cmap(font.font());
        BitSet set = new BitSet();
        Arrays.stream(all).filter(glyph -> glyph >= 0).forEach(set::set);
        GlyphContexts contexts = new GlyphContexts(set, tables);
        this.glyphs = Arrays.stream(all)
                .map(glyph -> glyph >= 0 && contexts.mayBeginAt(glyph) ? -1 : glyph)
                .toArray();
        this.outlines = outlines;
        this.latin = new PairAdvances(font.font(), glyphs, contexts, PlainScript.LATIN);
        this.common = new PairAdvances(font.font(), glyphs, contexts, PlainScript.COMMON);
        this.unit = 1.0 / font.units();
    }

    /**
     * Of a font; empty if its rules are not known or not sound.
     *
     * @param outlines gives the outline of a glyph
     */
    static Optional<PlainFont> of(OpenFont font, IntFunction<Drawn> outlines) {
        try {
            return font.layout().map(tables -> new ShapedPlainFont(font, tables, outlines));
        } catch (IndexOutOfBoundsException unsound) {
            return Optional.empty();
        }
    }

    @Override
    public double unit() {
        return unit;
    }

    @Override
    public boolean has(int index) {
        return glyphs[index] >= 0;
    }

    @Override
    public Drawn drawn(int index) {
        return outlines.apply(glyphs[index]);
    }

    @Override
    public float between(int first, int second, PlainScript script) {
        return pairs(script).between(first, second);
    }

    @Override
    public float after(int last, PlainScript script) {
        return pairs(script).after(last);
    }

    private PairAdvances pairs(PlainScript script) {
        return script == PlainScript.LATIN ? latin : common;
    }
}
