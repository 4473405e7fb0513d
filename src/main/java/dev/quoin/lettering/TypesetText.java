package dev.quoin.lettering;

import dev.quoin.drawing.TextAnchor;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;

/**
 * A line of text as a path, at a font size of 1: lengths in ems, x right, y up, from the line's start on its baseline.
 *
 * @param outline letters from left to right, to be filled by the non-zero rule; or open strokes
 * @param advance where a text that follows would start
 * @param ink the tight box around the outline; empty where nothing shows
 * @param capHeight the height of the first font's capitals
 * @param strokes whether the outline is open strokes, which can be followed but not filled
 */
public record TypesetText(Path outline, double advance, Box ink, double capHeight, boolean strokes) implements Typeset {
    static final TypesetText NOTHING = new TypesetText(Path.EMPTY, 0, Box.EMPTY, 1, false);

    /**
     * The line at a place, as SVG's {@code text-anchor} puts it there (by its advance, not its ink).
     *
     * @param x of the anchor, mm
     * @param y of the baseline, mm, y up
     * @param size the font size, mm
     */
    public Path at(double x, double y, TextAnchor anchor, double size) {
        double part =
                switch (anchor) {
                    case START -> 0;
                    case MIDDLE -> 0.5;
                    case END -> 1;
                };
        return outline.transform(new Affine(size, 0, 0, size, x - part * advance * size, y));
    }
}
