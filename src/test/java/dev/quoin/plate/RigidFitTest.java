package dev.quoin.plate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Point;
import dev.quoin.shop.JigShift;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Given points and where they were measured, the turn and shift between them are found. */
class RigidFitTest {
    private static final List<Point> CORNERS =
            List.of(new Point(-40, -30), new Point(40, -30), new Point(40, 30), new Point(-40, 35));

    @Property(tries = 200, seed = "2026")
    void aMoveIsRecoveredExactly(
            @ForAll @DoubleRange(min = -20, max = 20) double dx,
            @ForAll @DoubleRange(min = -20, max = 20) double dy,
            @ForAll @DoubleRange(min = -179, max = 179) double angle,
            @ForAll @IntRange(min = 2, max = 4) int count) {
        List<Point> points = CORNERS.subList(0, count);
        RigidFit fit = RigidFit.of(points, moved(points, new JigShift(dx, dy, angle).move()));
        assertEquals(dx, fit.shift().dx(), 1e-9);
        assertEquals(dy, fit.shift().dy(), 1e-9);
        assertEquals(angle, fit.shift().angle(), 1e-9);
        assertEquals(0, fit.rms(), 1e-9);
    }

    /** No move near the one found leaves less: the law of least squares, tried without its formula. */
    @Property(tries = 100, seed = "2026")
    void noMoveNearTheFitIsBetter(@ForAll @IntRange(min = 1, max = 100_000) int seed) {
        Random random = new Random(seed);
        List<Point> measured = new ArrayList<>();
        for (Point point : moved(CORNERS, new JigShift(1, -2, 3).move())) {
            measured.add(new Point(point.x() + 0.1 * random.nextGaussian(), point.y() + 0.1 * random.nextGaussian()));
        }
        RigidFit fit = RigidFit.of(CORNERS, measured);
        JigShift best = fit.shift();
        assertTrue(fit.rms() > 0 && fit.rms() < 0.5, "rms " + fit.rms());
        for (double[] step : new double[][] {{0.01, 0, 0}, {0, 0.01, 0}, {0, 0, 0.01}}) {
            for (int sign : new int[] {-1, 1}) {
                JigShift near = new JigShift(
                        best.dx() + sign * step[0], best.dy() + sign * step[1], best.angle() + sign * step[2]);
                assertTrue(fit.rms() < rms(moved(CORNERS, near.move()), measured));
            }
        }
        assertEquals(rms(moved(CORNERS, best.move()), measured), fit.rms(), 1e-9);
    }

    @Test
    void aMirrorImageOfThreePointsOrMoreIsToldFromATurn() {
        List<Point> mirrored = moved(CORNERS, Affine.scale(-1, 1).then(new JigShift(2, 1, 30).move()));
        RigidFit fit = RigidFit.of(CORNERS, mirrored);
        assertTrue(fit.rms() > 10, "rms " + fit.rms());
        assertEquals(0, fit.mirroredRms(), 1e-9);
    }

    private static List<Point> moved(List<Point> points, Affine move) {
        return points.stream().map(move::apply).toList();
    }

    private static double rms(List<Point> a, List<Point> b) {
        double squares = 0;
        for (int i = 0; i < a.size(); i++) {
            squares += Math.pow(a.get(i).x() - b.get(i).x(), 2)
                    + Math.pow(a.get(i).y() - b.get(i).y(), 2);
        }
        return Math.sqrt(squares / a.size());
    }
}
