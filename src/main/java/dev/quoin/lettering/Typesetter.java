package dev.quoin.lettering;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Path;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Sets a line of text in type. The text is brought into Unicode's form NFC; its direction is that of its first letter
 * with one (UAX #9, rules P2 and P3), and runs within it are ordered by UAX #9; each grapheme takes the first font that
 * has the whole of it; each run of one font and direction is shaped in the context of the line.
 *
 * <p>Tabs and line breaks are set as spaces. Spaces that no listed font has are set as plain ones. Characters that only
 * steer others (joiners, variation selectors, bidi marks) show nothing. Every other character either shows ink or is
 * reported: control characters too, and those for which a font has an empty glyph.
 *
 * <p>Safe for use by several threads. The same text in the same fonts gives the same outlines to the last digit.
 */
public final class Typesetter {
    /** Sets one line. */
    public Typeset set(String text, FontSet fonts) {
        TextRuns runs = TextRuns.of(text, fonts);
        Set<Integer> missing = new LinkedHashSet<>(runs.missing());
        if (!missing.isEmpty()) {
            return new MissingCharacters(List.copyOf(missing), fonts.families());
        }
        Path.Builder outline = Path.builder();
        BitSet inked = new BitSet(runs.line().length());
        double pen = 0;
        char[] characters = runs.line().toCharArray();
        for (TextPart part : runs.inVisualOrder()) {
            GlyphRun run = part.typeface().set(characters, part.start(), part.end(), part.isRightToLeft());
            draw(run, pen, outline);
            inked.or(run.inked(part.end()));
            pen += run.advance();
        }
        missing.addAll(runs.without(inked));
        if (!missing.isEmpty()) {
            return new MissingCharacters(List.copyOf(missing), fonts.families());
        }
        Path drawn = outline.build();
        return new TypesetText(drawn, pen, drawn.bounds(), fonts.capHeight(), fonts.strokes());
    }

    private static void draw(GlyphRun run, double pen, Path.Builder outline) {
        for (GlyphRun.Glyph glyph : run.glyphs()) {
            if (!glyph.missing() && !glyph.outline().isEmpty()) {
                outline.append(glyph.outline().transform(Affine.translate(pen + glyph.x(), glyph.y())));
            }
        }
    }
}
