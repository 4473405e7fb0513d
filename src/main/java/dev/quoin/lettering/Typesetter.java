package dev.quoin.lettering;

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
                LineDrawing line = new LineDrawing();
                line.draw(plain.get());
                return line.drawn(fonts);
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
        LineDrawing line = new LineDrawing();
        BitSet inked = new BitSet(runs.line().length());
        char[] characters = runs.line().toCharArray();
        for (TextPart part : runs.inVisualOrder()) {
            GlyphRun run = part.typeface().set(characters, part.start(), part.end(), part.isRightToLeft());
            line.draw(run);
            inked.or(run.inked(part.end()));
        }
        missing.addAll(runs.without(inked));
        return missing.isEmpty() ? line.drawn(fonts) : new MissingCharacters(List.copyOf(missing), fonts.families());
    }
}
