package dev.quoin.toolpath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/** The hatch against the same lines cut by a general geometry library. Lines are compared end by end within 1e-6 mm. */
class HatchAgainstJtsTest {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double SAME = 1e-6;

    @Test
    void aThousandRandomPolygonsWithHoles() {
        Random random = new Random(20260305);
        for (int i = 0; i < 1000; i++) {
            List<Polyline> rings = new ArrayList<>();
            double x = random.nextDouble() * 4 - 2;
            double y = random.nextDouble() * 4 - 2;
            rings.add(star(random, x, y, 3, 6));
            rings.add(star(random, x, y, 0.5, 2));
            compare(rings, FillRule.EVEN_ODD, random.nextDouble() * 360, 0.1 + random.nextDouble() / 2);
        }
    }

    @Test
    void polygonsThatCrossThemselvesUnderBothRules() {
        Random random = new Random(7);
        for (int i = 0; i < 100; i++) {
            double[] xy = random.doubles(14, -5, 5).toArray();
            List<Polyline> rings = List.of(new Polyline(xy, true));
            for (FillRule rule : FillRule.values()) {
                compare(rings, rule, random.nextDouble() * 360, 0.3);
            }
        }
    }

    @Test
    void glyphs() {
        // The platform's serif outlines, at 12 mm to the em: curves, counters, dots.
        Font font = new Font(Font.SERIF, Font.PLAIN, 1000);
        FontRenderContext context = new FontRenderContext(null, true, true);
        for (char letter : "AaBbgQ8@&%\u00df\u00e9\u017d".toCharArray()) {
            Path glyph = Path.of(
                            font.createGlyphVector(context, new char[] {letter}).getOutline())
                    .transform(Affine.scale(0.012, -0.012))
                    .transform(Affine.translate(-4, -4));
            compare(glyph.flatten(0.005), FillRule.NON_ZERO, 33, 0.07);
        }
    }

    private static Polyline star(Random random, double x, double y, double least, double most) {
        int corners = 3 + random.nextInt(12);
        double[] xy = new double[2 * corners];
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / corners;
            double r = least + (most - least) * random.nextDouble();
            xy[2 * i] = x + r * Math.cos(angle);
            xy[2 * i + 1] = y + r * Math.sin(angle);
        }
        return new Polyline(xy, true);
    }

    private static void compare(List<Polyline> rings, FillRule rule, double angle, double spacing) {
        Grid grid = Grid.at(angle, spacing);
        Spans spans = Spans.of(new Hatch(List.of(new Cover(rings, rule)), grid));
        List<double[]> ours = new ArrayList<>();
        for (int i = 0; i < spans.lines(); i++) {
            for (int at = spans.starts()[i]; at < spans.starts()[i + 1]; at += 2) {
                add(ours, spans.first() + i, spans.u()[at], spans.u()[at + 1]);
            }
        }
        List<double[]> theirs = cut(area(rings, rule), grid, spans.first() - 2, spans.first() + spans.lines() + 2);
        assertFalse(theirs.isEmpty(), "nothing to compare");
        assertEquals(theirs.size(), ours.size(), "number of spans");
        for (int i = 0; i < ours.size(); i++) {
            for (int k = 0; k < 3; k++) {
                assertEquals(theirs.get(i)[k], ours.get(i)[k], SAME);
            }
        }
    }

    /** Spans shorter than the comparison's own tolerance are nobody's. */
    private static void add(List<double[]> spans, int line, double from, double to) {
        if (to - from > SAME) {
            spans.add(new double[] {line, from, to});
        }
    }

    /** The area by overlay alone: exclusive or of the rings, or, for a rule by winding, the faces that wind. */
    private static Geometry area(List<Polyline> rings, FillRule rule) {
        List<LineString> lines = rings.stream()
                .map(HatchAgainstJtsTest::ring)
                .map(r -> (LineString) r)
                .toList();
        Geometry noded = OverlayNGRobust.union(FACTORY.buildGeometry(lines));
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(noded);
        List<Geometry> kept = new ArrayList<>();
        for (Object face : polygonizer.getPolygons()) {
            if (isInside(rings, rule, ((Polygon) face).getInteriorPoint().getCoordinate())) {
                kept.add((Polygon) face);
            }
        }
        return OverlayNGRobust.union(FACTORY.buildGeometry(kept));
    }

    /** By the sum of the angles under which the edges are seen. */
    private static boolean isInside(List<Polyline> rings, FillRule rule, Coordinate p) {
        double sum = 0;
        for (Polyline ring : rings) {
            for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
                double ax = ring.x(j) - p.x;
                double ay = ring.y(j) - p.y;
                double bx = ring.x(i) - p.x;
                double by = ring.y(i) - p.y;
                sum += Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
            }
        }
        long winding = Math.round(sum / (2 * Math.PI));
        return rule == FillRule.EVEN_ODD ? winding % 2 != 0 : winding != 0;
    }

    private static LinearRing ring(Polyline chain) {
        Coordinate[] points = new Coordinate[chain.size() + 1];
        for (int i = 0; i < points.length; i++) {
            points[i] = new Coordinate(chain.x(i % chain.size()), chain.y(i % chain.size()));
        }
        return FACTORY.createLinearRing(points);
    }

    private static List<double[]> cut(Geometry area, Grid grid, int first, int end) {
        List<double[]> spans = new ArrayList<>();
        for (int line = first; line < end; line++) {
            Coordinate[] ends = {
                new Coordinate(grid.x(-100, line), grid.y(-100, line)),
                new Coordinate(grid.x(100, line), grid.y(100, line))
            };
            Geometry parts = OverlayNGRobust.overlay(FACTORY.createLineString(ends), area, OverlayNG.INTERSECTION);
            List<double[]> found = new ArrayList<>();
            for (int i = 0; i < parts.getNumGeometries(); i++) {
                if (parts.getGeometryN(i) instanceof LineString part && !part.isEmpty()) {
                    double[] u = Arrays.stream(part.getCoordinates())
                            .mapToDouble(c -> grid.u(c.x, c.y))
                            .sorted()
                            .toArray();
                    found.add(new double[] {line, u[0], u[u.length - 1]});
                }
            }
            found.sort(Comparator.comparingDouble(span -> span[1]));
            joined(found).forEach(span -> add(spans, (int) span[0], span[1], span[2]));
        }
        return spans;
    }

    /** The library may cut a span where the area's edge touches it. */
    private static List<double[]> joined(List<double[]> spans) {
        List<double[]> joined = new ArrayList<>();
        for (double[] span : spans) {
            double[] last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && span[1] - last[2] <= 1e-9) {
                last[2] = span[2];
            } else {
                joined.add(span);
            }
        }
        return joined;
    }

    @Test
    void theComparisonCanFail() {
        List<Polyline> square = List.of(new Polyline(new double[] {0, 0, 2, 0, 2, 2, 0, 2}, true));
        Grid grid = Grid.at(0, 0.5);
        List<double[]> shifted = cut(area(square, FillRule.NON_ZERO), Grid.at(0.001, 0.5), 0, 4);
        Spans spans = Spans.of(new Hatch(List.of(new Cover(square, FillRule.NON_ZERO)), grid));
        assertTrue(Math.abs(shifted.get(3)[1] - spans.u()[6]) > SAME);
    }
}
