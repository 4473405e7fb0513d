package dev.quoin.lettering;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;

/** What outlines cover, by the platform's own areas. */
final class Coverage {
    private Coverage() {}

    /** The area that only one of the two covers, as a part of the first's. */
    static double difference(Path expected, Path actual) {
        Box around = expected.bounds().union(actual.bounds()).grow(1);
        Area difference = new Area(expected.toShape(FillRule.NON_ZERO));
        difference.exclusiveOr(new Area(actual.toShape(FillRule.NON_ZERO)));
        return inkArea(Path.of(difference), around) / inkArea(expected, around);
    }

    /** The area covered inside a box. */
    static double inkArea(Path outline, Box within) {
        Area area = new Area(outline.toShape(FillRule.NON_ZERO));
        area.intersect(new Area(new Rectangle2D.Double(within.minX(), within.minY(), within.width(), within.height())));
        return Math.abs(Path.of(area).flatten(1e-5).stream()
                .mapToDouble(Polyline::signedArea)
                .sum());
    }
}
