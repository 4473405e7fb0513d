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

/** Whether ink lies inside a pocket of a given shape. The edge may be touched, and overstepped by 0.01 mm. */
final class PocketFit {
    static final double TOLERANCE = 0.01;
    private static final double FLATNESS = 0.002;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Box bounds;
    private final boolean rectangular;
    /** Of a circle around the middle of the bounds that lies inside the pocket, mm; 0 if that is outside it. */
    private final double roomAround;

    private final PreparedGeometry pocket;

    PocketFit(Path outline) {
        bounds = outline.bounds();
        rectangular = isRectangle(outline, bounds);
        Geometry room = polygon(outline).buffer(TOLERANCE);
        pocket = PreparedGeometryFactory.prepare(room);
        roomAround = rectangular ? 0 : roomAround(room, bounds.centre());
    }

    boolean holds(Path ink) {
        if (!bounds.contains(ink.bounds(), TOLERANCE)) {
            return false;
        }
        return rectangular
                || isInMiddle(ink.bounds())
                || ink.flatten(FLATNESS).stream().allMatch(line -> pocket.covers(geometry(line)));
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

    private static boolean isRectangle(Path outline, Box bounds) {
        List<Polyline> pieces = outline.flatten(FLATNESS);
        return pieces.size() == 1
                && pieces.get(0).size() == 4
                && Math.abs(Math.abs(pieces.get(0).signedArea()) - bounds.width() * bounds.height()) < 1e-9;
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
