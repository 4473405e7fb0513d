package dev.quoin.lettering;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import java.util.BitSet;
import java.util.List;

/**
 * Glyphs set side by side, ems.
 *
 * @param glyphs the glyphs from left to right
 * @param advance where the next run starts
 */
record GlyphRun(List<Glyph> glyphs, double advance) {
    /**
     * One glyph.
     *
     * @param outline its outline around its own origin; empty where it shows nothing
     * @param ink the tight box around the outline
     * @param x where its origin stands in the run
     * @param y the same, up from the baseline
     * @param index of the first character that it shows, in the line's text
     * @param missing whether the font has no such glyph
     */
    record Glyph(Path outline, Box ink, double x, double y, int index, boolean missing) {}

    /**
     * The characters that show ink. A glyph shows all characters from its own to that of the next glyph in the text, so
     * both letters of a ligature count.
     *
     * @param end index after the run's last character
     */
    BitSet inked(int end) {
        BitSet starts = new BitSet(end);
        glyphs.forEach(glyph -> starts.set(glyph.index()));
        starts.set(end);
        BitSet inked = new BitSet(end);
        for (Glyph glyph : glyphs) {
            if (!glyph.missing() && !glyph.outline().isEmpty()) {
                inked.set(glyph.index(), starts.nextSetBit(glyph.index() + 1));
            }
        }
        return inked;
    }
}
