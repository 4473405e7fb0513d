package dev.quoin.verify;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/** A pocket's shape, and whether ink lies in it: 0.01 mm over the edge are granted, and the rounding of a plate file. */
final class Pocket {
    private static final double TOLERANCE = 0.01 + 0.001;
    private static final double FLATNESS = 0.002;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final PreparedGeometry shape;
    private final Box box;
    private final boolean fillsItsBox;

    /**
     * Takes its outline.
     *
     * @param outline around its centre, before the slot's turn, mm
     */
    Pocket(Path outline) {
        Geometry area = FACTORY.createGeometryCollection();
        for (Polyline ring : outline.flatten(FLATNESS)) {
            if (ring.size() > 2) {
                area = area.isEmpty() ? polygon(ring) : area.union(polygon(ring));
            }
        }
        this.box = outline.bounds();
        this.fillsItsBox = Math.abs(area.getArea() - box.width() * box.height()) < 1e-6;
        this.shape = PreparedGeometryFactory.prepare(area.buffer(TOLERANCE));
    }

    /** Whether a path lies inside, given around the pocket's centre, before the slot's turn. */
    boolean holds(Path ink) {
        if (!box.contains(ink.bounds(), TOLERANCE)) {
            return false;
        }
        return fillsItsBox || ink.flatten(FLATNESS).stream().allMatch(line -> shape.covers(line(line)));
    }

    private static Geometry polygon(Polyline ring) {
        List<Coordinate> points = points(ring);
        points.add(points.get(0));
        return FACTORY.createPolygon(points.toArray(Coordinate[]::new)).buffer(0);
    }

    private static Geometry line(Polyline line) {
        List<Coordinate> points = points(line);
        if (points.size() > 1 && line.closed()) {
            points.add(points.get(0));
        }
        return points.size() == 1
                ? FACTORY.createPoint(points.get(0))
                : FACTORY.createLineString(points.toArray(Coordinate[]::new));
    }

    private static List<Coordinate> points(Polyline line) {
        List<Coordinate> points = new ArrayList<>();
        for (int i = 0; i < line.size(); i++) {
            points.add(new Coordinate(line.x(i), line.y(i)));
        }
        return points;
    }
}
