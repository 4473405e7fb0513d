package dev.quoin.lettering;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A line of text, letter by letter, so that the letters can be laid along a path.
 *
 * @param letters from left to right
 * @param advance where a text that follows would start
 * @param capHeight the height of the first font's capitals
 */
public record GlyphLine(List<Letter> letters, double advance, double capHeight) implements SetLine {
    /**
     * What stays together: the glyphs of one grapheme, so that an accent stays on its letter; a ligature is one.
     *
     * @param outline around its own origin, which lies at its start on the baseline; empty for a space
     * @param x where its origin stands in the line
     * @param advance how much room it takes
     */
    public record Letter(Path outline, double x, double advance) {
        double middle() {
            return x + advance / 2;
        }
    }

    public GlyphLine {
        letters = List.copyOf(letters);
    }

    /** The line at another size. */
    public GlyphLine times(double size) {
        List<Letter> scaled = letters.stream()
                .map(letter -> new Letter(
                        letter.outline().transform(Affine.scale(size, size)),
                        letter.x() * size,
                        letter.advance() * size))
                .toList();
        return new GlyphLine(scaled, advance * size, capHeight * size);
    }

    /** The line and, behind it, another; capitals are as high as the higher ones. */
    public GlyphLine followedBy(GlyphLine next) {
        List<Letter> both = new ArrayList<>(letters);
        next.letters.forEach(letter -> both.add(new Letter(letter.outline(), advance + letter.x(), letter.advance())));
        return new GlyphLine(both, advance + next.advance, Math.max(capHeight, next.capHeight));
    }
}
