package dev.quoin.format;

import dev.quoin.geometry.Area;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;

/**
 * The outline of an area for readers that count even-odd. One that already reads so stays as it is to the last digit; one
 * whose pieces overlap is joined.
 *
 * <p>The integral of the winding number is the sum of the signed areas of the pieces. It has the size of the area exactly
 * if the winding number is 1 everywhere inside, or -1 everywhere; then both rules agree.
 */
final class DisjointOutline {
    /** Areas are compared along these lines, mm. */
    private static final double TOLERANCE = 0.002;
    /** What flattening and rounding may make of equal areas, as a part of them. */
    private static final double EQUAL = 1e-3;

    private DisjointOutline() {}

    static Path of(Area area) {
        if (area.rule() == FillRule.EVEN_ODD || area.isEmpty()) {
            return area.outline();
        }
        Path joined = Path.of(new java.awt.geom.Area(area.outline().toShape(FillRule.NON_ZERO)));
        double size = Math.abs(signedArea(joined));
        boolean alike = Math.abs(Math.abs(signedArea(area.outline())) - size) <= EQUAL * size;
        return alike ? area.outline() : joined;
    }

    private static double signedArea(Path path) {
        return path.flatten(TOLERANCE).stream()
                .mapToDouble(Polyline::signedArea)
                .sum();
    }
}
