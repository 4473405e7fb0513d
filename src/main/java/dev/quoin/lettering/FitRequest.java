package dev.quoin.lettering;

import dev.quoin.drawing.TextAnchor;
import dev.quoin.geometry.Area;
import java.util.OptionalDouble;

/**
 * The space that a text has, in the text's own frame: mm, x along its lines, y up.
 *
 * @param space what its ink must lie inside
 * @param anchor which way its lines are flush: start, middle or end of their ink
 * @param align where it stands if it has room to move up and down
 * @param inset how far its ink must keep from the edge of the space, mm; 0 or more
 * @param leastCapHeight the least height of capitals, mm; above 0
 * @param greatestCapHeight the greatest, mm; unlimited if empty
 * @param mostLines into how many lines it may be broken; 1 or more
 * @param leastSqueeze how narrow letters may be made, as a factor of their width: 0.5 to 1; 1 is not at all
 */
public record FitRequest(
        Area space,
        TextAnchor anchor,
        VerticalAlign align,
        double inset,
        double leastCapHeight,
        OptionalDouble greatestCapHeight,
        int mostLines,
        double leastSqueeze) {
    public static final double NARROWEST = 0.5;

    public FitRequest {
        check(inset >= 0, "inset", inset);
        check(leastCapHeight > 0, "least cap height", leastCapHeight);
        check(greatestCapHeight.orElse(leastCapHeight) >= leastCapHeight, "greatest cap height", leastCapHeight);
        check(mostLines >= 1, "lines", mostLines);
        check(leastSqueeze >= NARROWEST && leastSqueeze <= 1, "squeeze", leastSqueeze);
    }

    /** One line in the middle of a space, capitals at least 1 mm high, never squeezed. */
    public static FitRequest in(Area space) {
        return new FitRequest(space, TextAnchor.MIDDLE, VerticalAlign.MIDDLE, 0, 1, OptionalDouble.empty(), 1, 1);
    }

    /** The same, with no capitals higher than this, mm, so that several texts can share a size. */
    public FitRequest withGreatest(double capHeight) {
        return new FitRequest(
                space,
                anchor,
                align,
                inset,
                Math.min(leastCapHeight, capHeight),
                OptionalDouble.of(capHeight),
                mostLines,
                leastSqueeze);
    }

    /** Whether there is a line for each that the text itself asks for; if not, its line breaks are set as spaces. */
    public boolean keepsLines(String text) {
        return LineBreaker.breaks(text) < mostLines;
    }

    private static void check(boolean holds, String what, double value) {
        if (!holds) {
            throw new IllegalArgumentException(what + " " + value);
        }
    }
}
