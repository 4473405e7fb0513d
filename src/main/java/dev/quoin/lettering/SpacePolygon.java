package dev.quoin.lettering;

import dev.quoin.geometry.Area;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** A connected space bounded by straight edges, which may have holes. */
record SpacePolygon(Polygon polygon, List<double[]> edges, boolean isConvex) {
    /** How far curves may leave the edges that stand for them, mm. */
    static final double FLATNESS = 0.01;

    private static final int ARC_SEGMENTS = 16;
    private static final double[] HEIGHTS = {0.5, 0.3, 0.7, 0.1, 0.9};
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** The parts of an area that keep this far from its boundary, mm. */
    static List<SpacePolygon> of(Area area, double inset) {
        Geometry whole = FACTORY.createPolygon();
        // The platform's area resolves crossings and the fill rule into rings without either.
        Path rings = Path.of(new java.awt.geom.Area(area.outline().toShape(area.rule())));
        for (Polyline line : rings.flatten(FLATNESS)) {
            if (line.size() > 2) {
                whole = whole.symDifference(ring(line));
            }
        }
        BufferParameters round = new BufferParameters(ARC_SEGMENTS);
        Geometry shrunk = new BufferOp(whole, round).getResultGeometry(-inset - 2 * FLATNESS);
        List<SpacePolygon> parts = new ArrayList<>();
        for (int i = 0; i < shrunk.getNumGeometries(); i++) {
            if (shrunk.getGeometryN(i) instanceof Polygon part && !part.isEmpty()) {
                parts.add(new SpacePolygon(part, edges(part), isConvex(part)));
            }
        }
        return parts;
    }

    /** The middle of its largest circle; in a shape with notches also points spread over it. All are inside. */
    List<Coordinate> inside() {
        List<Coordinate> points = new ArrayList<>();
        Envelope box = polygon.getEnvelopeInternal();
        double fine = Math.max(box.getWidth(), box.getHeight()) / 500;
        points.add(MaximumInscribedCircle.getCenter(polygon, fine).getCoordinate());
        if (!isConvex) {
            for (double share : new double[] {0.2, 0.5, 0.8}) {
                addInside(box.getMinX() + share * box.getWidth(), points);
            }
        }
        return points;
    }

    /** Points inside on the upright line at x, the middle first; in a convex shape one is enough. */
    List<Coordinate> inside(double x) {
        List<Coordinate> points = new ArrayList<>();
        addInside(x, points);
        return isConvex && !points.isEmpty() ? points.subList(0, 1) : points;
    }

    private void addInside(double x, List<Coordinate> points) {
        Envelope box = polygon.getEnvelopeInternal();
        for (double share : HEIGHTS) {
            Coordinate point = new Coordinate(x, box.getMinY() + share * box.getHeight());
            if (contains(point.x, point.y)) {
                points.add(point);
            }
        }
    }

    boolean contains(double x, double y) {
        return polygon.contains(FACTORY.createPoint(new Coordinate(x, y)));
    }

    private static boolean isConvex(Polygon polygon) {
        double hull = polygon.convexHull().getArea();
        return hull - polygon.getArea() < 1e-9 * hull;
    }

    private static Polygon ring(Polyline line) {
        Coordinate[] ring = new Coordinate[line.size() + 1];
        for (int i = 0; i < line.size(); i++) {
            ring[i] = new Coordinate(line.x(i), line.y(i));
        }
        ring[line.size()] = ring[0];
        return FACTORY.createPolygon(ring);
    }

    private static List<double[]> edges(Polygon polygon) {
        List<double[]> edges = new ArrayList<>();
        addEdges(polygon.getExteriorRing(), edges);
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            addEdges(polygon.getInteriorRingN(i), edges);
        }
        return edges;
    }

    private static void addEdges(LinearRing ring, List<double[]> edges) {
        LineString line = ring;
        for (int i = 1; i < line.getNumPoints(); i++) {
            Coordinate from = line.getCoordinateN(i - 1);
            Coordinate to = line.getCoordinateN(i);
            if (!from.equals2D(to)) {
                edges.add(new double[] {from.x, from.y, to.x, to.y});
            }
        }
    }
}
