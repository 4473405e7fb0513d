package dev.quoin.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.nio.ByteBuffer;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PathTest {
    private static final Path SQUARE = Path.of(new Box(1, 2, 4, 6));
    private static final Path CIRCLE = Path.of(new Ellipse2D.Double(-10, -10, 20, 20));

    @Test
    void aRectanglesLengthIsItsPerimeterAndItsAreaSidesMultiplied() {
        assertEquals(14, SQUARE.length(0.01), 1e-12);
        assertEquals(12, Math.abs(SQUARE.flatten(0.01).get(0).signedArea()), 1e-12);
    }

    /** The platform's circle is four cubics, whose radius is right to 0.03 %. */
    @Test
    void aCirclesLengthComesNearTwoPiR() {
        assertEquals(2 * Math.PI * 10, CIRCLE.length(1e-4), 2 * Math.PI * 10 * 3e-4);
        assertEquals(Math.PI * 100, Math.abs(CIRCLE.flatten(1e-4).get(0).signedArea()), Math.PI * 100 * 6e-4);
    }

    @Test
    void boundsAreOfTheCurveAndNotOfItsControlPoints() {
        Path bow = Path.builder().moveTo(0, 0).cubicTo(0, 4, 4, 4, 4, 0).build();
        // At t = 1/2 the height is 3/8 (4 + 4) = 3.
        assertEquals(3, bow.bounds().maxY(), 1e-12);
        Path arch = Path.builder().moveTo(0, 0).quadTo(2, 4, 4, 0).build();
        assertEquals(2, arch.bounds().maxY(), 1e-12);
        assertEquals(new Box(-10, -10, 10, 10), rounded(CIRCLE.bounds()));
    }

    /** The platform's own bounds of a shape turned by any angle, from its finely flattened outline. */
    @Property(tries = 200, seed = "2026")
    void boundsAgreeWithAFineOutline(@ForAll @DoubleRange(min = -180, max = 180) double angle) {
        Path turned = Path.builder()
                .moveTo(0, 0)
                .cubicTo(9, 1, -3, 7, 5, 5)
                .quadTo(8, -6, 1, -2)
                .close()
                .build()
                .transform(Affine.rotate(angle));
        Box box = turned.bounds();
        Box fine = turned.flatten(1e-6).stream()
                .flatMap(
                        line -> java.util.stream.IntStream.range(0, line.size()).mapToObj(line::point))
                .reduce(Box.EMPTY, (b, p) -> b.include(p.x(), p.y()), Box::union);
        assertTrue(box.contains(fine, 1e-9));
        assertTrue(fine.contains(box, 1e-5));
    }

    @Property(tries = 200, seed = "2026")
    void flatteningKeepsItsTolerance(@ForAll @DoubleRange(min = 0.0005, max = 0.5) @Scale(4) double tolerance) {
        for (Polyline line : CIRCLE.flatten(tolerance)) {
            for (int i = 0; i < line.size(); i++) {
                Point a = line.point(i);
                Point b = line.point((i + 1) % line.size());
                double middle = Math.hypot((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
                assertTrue(10 - middle <= tolerance + 0.003, "sagitta " + (10 - middle));
            }
        }
    }

    @Test
    void closingGoesBackToTheStartAndTheNextPieceStartsThere() {
        Path path = Path.builder()
                .moveTo(0, 0)
                .lineTo(3, 0)
                .lineTo(3, 4)
                .close()
                .lineTo(0, -5)
                .build();
        List<Polyline> pieces = path.flatten(0.01);
        assertEquals(2, pieces.size());
        assertTrue(pieces.get(0).closed());
        assertEquals(12, pieces.get(0).length(), 1e-12);
        assertEquals(5, pieces.get(1).length(), 1e-12);
    }

    @Test
    void aLonePointIsAPieceOfItsOwnBehindAClosedOneToo() {
        Path path = Path.builder()
                .append(SQUARE)
                .moveTo(7, 7)
                .lineTo(7, 7)
                .moveTo(8, 8)
                .close()
                .moveTo(9, 9)
                .lineTo(9, 9)
                .build();
        List<Point> starts =
                path.flatten(0.01).stream().map(line -> line.point(0)).toList();
        assertEquals(List.of(new Point(1, 2), new Point(7, 7), new Point(8, 8), new Point(9, 9)), starts);
    }

    @Test
    void aPathGoesToThePlatformAndBackUnchanged() {
        assertEquals(CIRCLE, Path.of(CIRCLE.toShape(FillRule.NON_ZERO)));
        assertEquals(Path.of(new Rectangle2D.Double(1, 2, 3, 4)).bounds(), SQUARE.bounds());
    }

    @Test
    void pathsWrittenOneAfterTheOtherAreReadUnchanged() throws Exception {
        Path mixed = Path.builder()
                .moveTo(0.1, -1e-9)
                .lineTo(1e9, 2)
                .quadTo(1.0 / 3, 4, 5, 6)
                .close()
                .moveTo(7, 7)
                .lineTo(8, 8)
                .build();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        for (Path path : List.of(CIRCLE, Path.EMPTY, mixed)) {
            path.write(out);
        }
        ByteBuffer in = ByteBuffer.wrap(bytes.toByteArray());
        assertEquals(List.of(CIRCLE, Path.EMPTY, mixed), List.of(Path.read(in), Path.read(in), Path.read(in)));
        assertFalse(in.hasRemaining());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 7, 64})
    void linesAreAMoveAndALineEach(int lines) {
        Path.Builder drawn = Path.builder();
        double[] xy = new double[4 * lines];
        for (int i = 0; i < lines; i++) {
            xy[4 * i] = i;
            xy[4 * i + 3] = -i;
            drawn.moveTo(i, 0).lineTo(0, -i);
        }
        assertEquals(drawn.build(), Path.ofLines(xy));
    }

    @Test
    void aPathStartsWithAMove() {
        assertThrows(IllegalStateException.class, () -> Path.builder().lineTo(1, 1));
    }

    @Test
    void aMoveThatDrawsNothingIsLeftOut() {
        assertTrue(Path.builder().moveTo(1, 1).build().isEmpty());
        assertEquals(
                Path.builder().moveTo(2, 2).lineTo(3, 3).build(),
                Path.builder()
                        .moveTo(1, 1)
                        .moveTo(2, 2)
                        .lineTo(3, 3)
                        .moveTo(9, 9)
                        .build());
        Path line = Path.builder().moveTo(2, 2).lineTo(3, 3).build();
        assertEquals(line, Path.builder().moveTo(-9, -9).append(line).build());
        assertEquals(line, Path.builder().moveTo(-9, -9).append(line, 0, 0).build());
        assertEquals(
                line,
                Path.builder().append(line).moveTo(9, 9).append(Path.EMPTY).build());
    }

    private static Box rounded(Box box) {
        return new Box(Math.rint(box.minX()), Math.rint(box.minY()), Math.rint(box.maxX()), Math.rint(box.maxY()));
    }
}
