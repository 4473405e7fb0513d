package dev.quoin.toolpath;

import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Polyline;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * The true edge of covers that may overlap and cross themselves: where their lines meet, these are cut at each
 * other, the faces between them found, those kept that the fill rules call inside, and joined (JTS does the geometry).
 */
final class Edge {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Edge() {}

    /**
     * What the covers cover together, less a strip along the edge.
     *
     * @param inset width of the strip, mm, not below 0
     * @param tolerance how far the rounded inner edge may leave its curve, mm
     */
    static Cover inside(List<Cover> covers, double inset, double tolerance) {
        Geometry area = faces(covers);
        Geometry kept = inset == 0 ? area : BufferOp.bufferOp(area, -inset, rounding(inset, tolerance));
        List<Polyline> outline = new ArrayList<>();
        for (int i = 0; i < kept.getNumGeometries(); i++) {
            if (kept.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                addRings(polygon, outline);
            }
        }
        return new Cover(outline, FillRule.EVEN_ODD);
    }

    /**
     * As many lines to a quarter circle of radius r as keep {@code r (1 - cos(pi / 4n))} within the tolerance; and half as
     * many again, since the library rounds the number of lines of a shorter arc, so that each may span 1.5 times its share.
     */
    private static BufferParameters rounding(double radius, double tolerance) {
        double half = Math.acos(Math.max(0, 1 - tolerance / radius));
        int perQuarter = (int) Math.ceil(1.5 * Math.PI / 4 / half);
        BufferParameters parameters = new BufferParameters(Math.max(perQuarter, 2));
        // The library first leaves out points within a hundredth of the distance, which would come on top of the
        // tolerance.
        parameters.setSimplifyFactor(tolerance / (10 * radius));
        return parameters;
    }

    /** The true area of the covers together. */
    static Geometry faces(List<Cover> covers) {
        return Rings.parts(covers).map(Edge::polygons).orElseGet(() -> entangled(covers));
    }

    private static Geometry polygons(List<Rings.Part> parts) {
        return FACTORY.createMultiPolygon(parts.stream()
                .map(part -> FACTORY.createPolygon(
                        ring(part.shell()),
                        part.holes().stream().map(Edge::ring).toArray(LinearRing[]::new)))
                .toArray(Polygon[]::new));
    }

    private static LinearRing ring(Polyline chain) {
        return FACTORY.createLinearRing(coordinates(chain));
    }

    /** The same where lines meet, or may. */
    static Geometry entangled(List<Cover> covers) {
        List<LineString> lines = new ArrayList<>();
        for (Cover cover : covers) {
            cover.outline().forEach(chain -> addRing(chain, lines));
        }
        Geometry all = FACTORY.buildGeometry(lines);
        if (all.isEmpty()) {
            return FACTORY.createPolygon();
        }
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(OverlayNGRobust.union(all));
        List<Polygon> inside = new ArrayList<>();
        for (Polygon face : polygons(polygonizer)) {
            Point within = face.getInteriorPoint();
            if (covers.stream().anyMatch(cover -> Winding.isInside(cover, within.getX(), within.getY()))) {
                face.normalize();
                inside.add(face);
            }
        }
        // The library finds faces in an order that differs from run to run.
        inside.sort(null);
        return OverlayNGRobust.union(FACTORY.createGeometryCollection(inside.toArray(new Geometry[0])));
    }

    @SuppressWarnings("unchecked") // The library gives a raw collection.
    private static Collection<Polygon> polygons(Polygonizer polygonizer) {
        return polygonizer.getPolygons();
    }

    private static void addRing(Polyline chain, List<LineString> lines) {
        if (chain.size() >= 3) {
            lines.add(FACTORY.createLineString(coordinates(chain)));
        }
    }

    private static Coordinate[] coordinates(Polyline chain) {
        int n = chain.size();
        Coordinate[] ring = new Coordinate[n + 1];
        for (int i = 0; i <= n; i++) {
            ring[i] = new Coordinate(chain.x(i % n), chain.y(i % n));
        }
        return ring;
    }

    private static void addRings(Polygon polygon, List<Polyline> outline) {
        outline.add(chain(polygon.getExteriorRing()));
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            outline.add(chain(polygon.getInteriorRingN(i)));
        }
    }

    private static Polyline chain(LinearRing ring) {
        Coordinate[] points = ring.getCoordinates();
        double[] xy = new double[2 * (points.length - 1)];
        for (int i = 0; i < points.length - 1; i++) {
            xy[2 * i] = points[i].x;
            xy[2 * i + 1] = points[i].y;
        }
        return new Polyline(xy, true);
    }
}
