package dev.quoin.lettering;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
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
 * <p>Plain Latin text, in which each glyph depends on no more than its neighbour, is set from what the shaper once said
 * about its pairs; all other text is shaped as a whole. Both ways give the same outlines to the last digit.
 *
 * <p>Safe for use by several threads. The same text in the same fonts gives the same outlines to the last digit.
 */
public final class Typesetter {
    /** Sets one line. */
    public Typeset set(String text, FontSet fonts) {
        if (fonts.first() instanceof OutlineTypeface typeface) {
            Optional<GlyphRun> plain = typeface.setPlain(text);
            if (plain.isPresent()) {
                return LineDrawing.of(List.of(plain.get()), fonts);
            }
        }
        return setShaped(text, fonts);
    }

    /** Sets one line with all that its script may ask for. */
    Typeset setShaped(String text, FontSet fonts) {
        TextRuns runs = TextRuns.of(text, fonts);
        Set<Integer> missing = new LinkedHashSet<>(runs.missing());
        if (!missing.isEmpty()) {
            return new MissingCharacters(List.copyOf(missing), fonts.families());
        }
        List<GlyphRun> shaped = shape(runs, missing);
        return missing.isEmpty()
                ? LineDrawing.of(shaped, fonts)
                : new MissingCharacters(List.copyOf(missing), fonts.families());
    }

    /** Sets one line, letter by letter, at a font size of 1. */
    public SetLine letters(String text, FontSet fonts) {
        TextRuns runs = TextRuns.of(text, fonts);
        Set<Integer> missing = new LinkedHashSet<>(runs.missing());
        List<GlyphRun> shaped = missing.isEmpty() ? shape(runs, missing) : List.of();
        if (!missing.isEmpty()) {
            return new MissingCharacters(List.copyOf(missing), fonts.families());
        }
        int[] graphemes = runs.graphemeOfEach();
        List<GlyphLine.Letter> letters = new ArrayList<>();
        double pen = 0;
        for (GlyphRun run : shaped) {
            letters.addAll(letters(run, pen, graphemes));
            pen += run.advance();
        }
        return new GlyphLine(letters, pen, fonts.capHeight());
    }

    /** The runs from left to right; what shows nothing though it should is added to {@code missing}. */
    private static List<GlyphRun> shape(TextRuns runs, Set<Integer> missing) {
        BitSet inked = new BitSet(runs.line().length());
        List<GlyphRun> shaped = new ArrayList<>();
        char[] characters = runs.line().toCharArray();
        for (TextPart part : runs.inVisualOrder()) {
            GlyphRun run = part.typeface().set(characters, part.start(), part.end(), part.isRightToLeft());
            inked.or(run.inked(part.end()));
            shaped.add(run);
        }
        missing.addAll(runs.without(inked));
        return shaped;
    }

    private static List<GlyphLine.Letter> letters(GlyphRun run, double pen, int[] graphemes) {
        List<GlyphLine.Letter> letters = new ArrayList<>();
        List<GlyphRun.Glyph> glyphs = run.glyphs();
        int from = 0;
        while (from < glyphs.size()) {
            int to = from + 1;
            while (to < glyphs.size()
                    && graphemes[glyphs.get(to).index()]
                            == graphemes[glyphs.get(from).index()]) {
                to++;
            }
            double x = glyphs.get(from).x();
            double next = to < glyphs.size() ? glyphs.get(to).x() : run.advance();
            Path.Builder outline = Path.builder();
            for (GlyphRun.Glyph glyph : glyphs.subList(from, to)) {
                outline.append(glyph.outline().transform(Affine.translate(glyph.x() - x, glyph.y())));
            }
            letters.add(new GlyphLine.Letter(outline.build(), pen + x, next - x));
            from = to;
        }
        return letters;
    }
}
