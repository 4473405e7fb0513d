package dev.quoin.verify;

import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import dev.quoin.plate.Wrap;
import dev.quoin.shop.Method;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/** Marks on the surface of a round piece, laid flat, as shapes that can be compared. */
final class Unrolled {
    private static final double FLATNESS = 0.002;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Method method;
    private final List<Geometry> parts = new ArrayList<>();

    Unrolled(Method method) {
        this.method = method;
    }

    /** Adds a mark of the artwork. */
    void add(Path path, FillRule rule) {
        // Rings that cross nowhere, whatever the rule was.
        add(method == Method.FILL ? Path.of(new java.awt.geom.Area(path.toShape(rule))) : path, (x, y) -> x);
    }

    /** Adds a mark as it is seen from above in a strip. */
    void add(Path path, Wrap wrap) {
        add(path, wrap::around);
    }

    /** Adds the lines of a hatch. */
    void addLines(Path path, Wrap wrap) {
        path.flatten(FLATNESS).forEach(line -> line(coordinates(line, wrap::around)));
    }

    /** All of it. */
    Geometry all() {
        return parts.isEmpty() ? FACTORY.createGeometryCollection() : UnaryUnionOp.union(parts);
    }

    private interface Around {
        double of(double x, double y);
    }

    private void add(Path path, Around around) {
        Geometry area = FACTORY.createPolygon();
        for (Polyline piece : path.flatten(FLATNESS)) {
            Coordinate[] points = coordinates(piece, around);
            if (method == Method.FOLLOW) {
                line(points);
            } else if (points.length > 3) {
                area = area.symDifference(FACTORY.createPolygon(points).buffer(0));
            }
        }
        if (!area.isEmpty()) {
            parts.add(area);
        }
    }

    private void line(Coordinate[] points) {
        if (points.length > 1) {
            parts.add(FACTORY.createLineString(points));
        }
    }

    private Coordinate[] coordinates(Polyline line, Around around) {
        boolean closes = line.closed() || method == Method.FILL;
        Coordinate[] points = new Coordinate[line.size() + (closes ? 1 : 0)];
        for (int i = 0; i < points.length; i++) {
            int from = i % line.size();
            points[i] = new Coordinate(around.of(line.x(from), line.y(from)), line.y(from));
        }
        return points;
    }
}
