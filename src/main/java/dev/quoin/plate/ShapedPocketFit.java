package dev.quoin.plate;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Point;
import dev.quoin.geometry.Polyline;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/** Whether ink lies inside a pocket of any shape. */
final class ShapedPocketFit implements PocketFit {
    static final double FLATNESS = 0.002;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Box bounds;
    /** Of a circle around the middle of the bounds that lies inside the pocket, mm; 0 if that is outside it. */
    private final double roomAround;

    private final PreparedGeometry pocket;

    ShapedPocketFit(Path outline) {
        bounds = outline.bounds();
        Geometry room = polygon(outline).buffer(TOLERANCE);
        pocket = PreparedGeometryFactory.prepare(room);
        roomAround = roomAround(room, bounds.centre());
    }

    @Override
    public boolean holds(Path ink) {
        Box box = ink.bounds();
        return bounds.contains(box, TOLERANCE)
                && (isInMiddle(box) || ink.flatten(FLATNESS).stream().allMatch(line -> pocket.covers(geometry(line))));
    }

    /** Most ink is, and then it need not be gone through line by line. */
    private boolean isInMiddle(Box ink) {
        double dx = Math.max(
                bounds.centre().x() - ink.minX(), ink.maxX() - bounds.centre().x());
        double dy = Math.max(
                bounds.centre().y() - ink.minY(), ink.maxY() - bounds.centre().y());
        return Math.hypot(dx, dy) < roomAround;
    }

    private static double roomAround(Geometry room, Point middle) {
        Geometry point = FACTORY.createPoint(new Coordinate(middle.x(), middle.y()));
        return room.covers(point) ? room.getBoundary().distance(point) : 0;
    }

    private static Geometry polygon(Path outline) {
        List<Geometry> rings = new ArrayList<>();
        for (Polyline piece : outline.flatten(FLATNESS)) {
            if (piece.size() >= 3) {
                rings.add(FACTORY.createPolygon(coordinates(piece, true)));
            }
        }
        return FACTORY.buildGeometry(rings).buffer(0);
    }

    private static Geometry geometry(Polyline line) {
        return line.size() == 1
                ? FACTORY.createPoint(new Coordinate(line.x(0), line.y(0)))
                : FACTORY.createLineString(coordinates(line, line.closed()));
    }

    private static Coordinate[] coordinates(Polyline line, boolean closed) {
        Coordinate[] points = new Coordinate[line.size() + (closed ? 1 : 0)];
        for (int i = 0; i < points.length; i++) {
            int from = i % line.size();
            points[i] = new Coordinate(line.x(from), line.y(from));
        }
        return points;
    }
}
