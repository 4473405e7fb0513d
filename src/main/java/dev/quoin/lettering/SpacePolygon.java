package dev.quoin.lettering;

import dev.quoin.geometry.Area;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** A connected space bounded by straight edges, which may have holes. */
record SpacePolygon(Polygon polygon, List<double[]> edges) {
    /** How far curves may leave the edges that stand for them, mm. */
    static final double FLATNESS = 0.002;

    private static final int ARC_SEGMENTS = 24;
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
                parts.add(new SpacePolygon(part, edges(part)));
            }
        }
        return parts;
    }

    /** The middle of its largest circle, then points spread over it; all inside. */
    List<Coordinate> inside() {
        List<Coordinate> points = new ArrayList<>();
        var box = polygon.getEnvelopeInternal();
        double fine = Math.max(box.getWidth(), box.getHeight()) / 500;
        points.add(MaximumInscribedCircle.getCenter(polygon, fine).getCoordinate());
        if (!isConvex()) {
            for (double v = 0.2; v < 0.9; v += 0.2) {
                for (double u = 0.2; u < 0.9; u += 0.3) {
                    Coordinate point =
                            new Coordinate(box.getMinX() + u * box.getWidth(), box.getMinY() + v * box.getHeight());
                    if (contains(point.x, point.y)) {
                        points.add(point);
                    }
                }
            }
        }
        return points;
    }

    boolean contains(double x, double y) {
        return polygon.contains(FACTORY.createPoint(new Coordinate(x, y)));
    }

    private boolean isConvex() {
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
