package dev.quoin.toolpath;

import dev.quoin.geometry.Area;
import dev.quoin.geometry.Polyline;
import java.util.List;
import java.util.OptionalDouble;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * How thick areas are. A part counts as thin only if it is thin everywhere: the tip of a star is not, a hairline is. Measured
 * by twice the area over the perimeter, which is exact for a band and never more than the width of the largest circle inside
 * (A &lt;= P r for every plane area with an inscribed circle of radius r), and where that is small, by that circle.
 */
public final class Thickness {
    private static final double TOLERANCE = 0.01;
    /** The faces between lines that cross by rounding are no parts, mm2. */
    private static final double LEAST_AREA = 1e-5;

    /** How far a width may be off, mm. */
    public static final double ACCURACY = 0.002;

    private Thickness() {}

    /**
     * The mean thickness, quickly: twice the area over the perimeter, mm. Outlines that overlap are not disentangled; 0 for
     * no area.
     */
    public static double mean(Area area) {
        double sum = 0;
        double perimeter = 0;
        for (Polyline chain : area.outline().flatten(TOLERANCE)) {
            sum += chain.signedArea();
            perimeter += chain.length();
        }
        return perimeter == 0 ? 0 : 2 * Math.abs(sum) / perimeter;
    }

    /** The width of the thinnest connected part, by the largest circle inside it, mm; empty if all reach {@code enough}. */
    public static OptionalDouble thinnest(Area area, double enough) {
        Geometry parts = Edge.faces(List.of(new Cover(area.outline().flatten(TOLERANCE), area.rule())));
        OptionalDouble least = OptionalDouble.empty();
        for (int i = 0; i < parts.getNumGeometries(); i++) {
            if (parts.getGeometryN(i) instanceof Polygon part && isThin(part, enough)) {
                double width = new MaximumInscribedCircle(part, ACCURACY / 2)
                                .getRadiusLine()
                                .getLength()
                        * 2;
                if (width < Math.min(enough, least.orElse(enough))) {
                    least = OptionalDouble.of(width);
                }
            }
        }
        return least;
    }

    private static boolean isThin(Polygon part, double enough) {
        return part.getArea() > LEAST_AREA && 2 * part.getArea() / part.getLength() < enough;
    }
}
