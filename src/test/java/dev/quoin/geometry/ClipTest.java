package dev.quoin.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Cutting areas and lines, held against JTS (OverlayNG) on the same shapes as straight lines. */
class ClipTest {
    private static final double FINE = 1e-4;

    @Test
    void anAreaIsCutAsJtsCutsIt() {
        Random random = new Random(1);
        for (int i = 0; i < 2_000; i++) {
            Path shape = blob(random);
            Path window = blob(random);
            Area cut = new Clip(new Area(window, FillRule.NON_ZERO)).cut(new Area(shape, FillRule.NON_ZERO));
            double expected =
                    OverlayNGRobust.overlay(polygon(shape), polygon(window), 1).getArea();
            assertEquals(expected, area(cut), 0.01, i + ": " + shape + " in " + window);
        }
    }

    @Test
    void aLineIsCutAsJtsCutsIt() {
        Random random = new Random(2);
        GeometryFactory factory = new GeometryFactory();
        for (int i = 0; i < 2_000; i++) {
            double[] xy = random.doubles(12, -12, 12).toArray();
            Path.Builder line = Path.builder().moveTo(xy[0], xy[1]);
            Coordinate[] points = new Coordinate[6];
            for (int k = 0; k < 6; k++) {
                line.lineTo(xy[2 * k], xy[2 * k + 1]);
                points[k] = new Coordinate(xy[2 * k], xy[2 * k + 1]);
            }
            Path window = lines(blob(random));
            Path cut = new Clip(new Area(window, FillRule.NON_ZERO)).cut(line.build());
            double expected = OverlayNGRobust.overlay(factory.createLineString(points), polygon(window), 1)
                    .getLength();
            assertEquals(expected, cut.length(FINE), 0.05, i + ": " + cut);
        }
    }

    @Test
    void whatLiesOnTheEdgeIsInside() {
        Path square = Path.of(Box.centred(10, 10));
        Clip clip = new Clip(new Area(square, FillRule.NON_ZERO));
        assertEquals(square, clip.cut(square));
        assertEquals(square, clip.cut(new Area(square, FillRule.NON_ZERO)).outline());
    }

    @Test
    void aClosedPathThatStartsInsideStaysInOnePiece() {
        Path square = Path.of(new Box(-4, -4, 20, 4));
        List<Polyline> cut = new Clip(new Area(Path.of(Box.centred(10, 10)), FillRule.NON_ZERO))
                .cut(square)
                .flatten(FINE);
        assertEquals(1, cut.size());
        assertEquals(9 + 8 + 9, cut.get(0).length(), 1e-9);
    }

    @Test
    void anAreaAroundAHoleOfTheWindowIsCut() {
        Path ring = Path.builder()
                .append(Path.of(Box.centred(20, 20)))
                .append(Path.of(Box.centred(8, 8)))
                .build();
        Clip clip = new Clip(new Area(ring, FillRule.EVEN_ODD));
        assertEquals(100 - 64, area(clip.cut(new Area(Path.of(Box.centred(10, 10)), FillRule.NON_ZERO))), 1e-9);
        assertTrue(clip.holds(Path.of(Box.centred(10, 10))));
    }

    /** A closed curve around a point near the origin that meets itself nowhere. */
    private static Path blob(Random random) {
        double x = random.nextDouble() * 8 - 4;
        double y = random.nextDouble() * 8 - 4;
        double[] radius = random.doubles(6, 2, 7).toArray();
        Path.Builder path = Path.builder();
        for (int i = 0; i <= 6; i++) {
            double angle = i * Math.PI / 3;
            double px = x + radius[i % 6] * Math.cos(angle);
            double py = y + radius[i % 6] * Math.sin(angle);
            if (i == 0) {
                path.moveTo(px, py);
            } else {
                double middle = angle - Math.PI / 6;
                double reach = (radius[i - 1] + radius[i % 6]) / 2;
                path.quadTo(x + reach * Math.cos(middle), y + reach * Math.sin(middle), px, py);
            }
        }
        return path.close().build();
    }

    private static Path lines(Path path) {
        Polyline line = path.flatten(0.01).get(0);
        Path.Builder lines = Path.builder().moveTo(line.x(0), line.y(0));
        for (int i = 1; i < line.size(); i++) {
            lines.lineTo(line.x(i), line.y(i));
        }
        return lines.close().build();
    }

    private static Geometry polygon(Path path) {
        Polyline line = path.flatten(FINE).get(0);
        Coordinate[] ring = new Coordinate[line.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            ring[i] = new Coordinate(line.x(i % line.size()), line.y(i % line.size()));
        }
        return new GeometryFactory().createPolygon(ring);
    }

    private static double area(Area area) {
        return Math.abs(area.outline().flatten(FINE).stream()
                .mapToDouble(Polyline::signedArea)
                .sum());
    }
}
