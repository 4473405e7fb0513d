package dev.quoin.toolpath;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.quoin.art.Mark;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Point;
import dev.quoin.shop.Machine;
import dev.quoin.shop.Pattern;
import dev.quoin.shop.Step;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Worked examples of the time model, each worked by hand in its comment. */
class TimeModelTest {
    private static BeamPath strokes(double[]... strokes) {
        Strokes.Builder builder = new Strokes.Builder();
        for (double[] xy : strokes) {
            for (int i = 0; i < xy.length; i += 2) {
                builder.point(xy[i], xy[i + 1]);
            }
            builder.end();
        }
        List<Strokes> passes = List.of(builder.build());
        return new BeamPath(passes, passes);
    }

    private static double[] xy(double... xy) {
        return xy;
    }

    private static void assertTally(Tally expected, Tally actual) {
        assertAll(
                () -> assertEquals(expected.markMm(), actual.markMm(), 1e-9),
                () -> assertEquals(expected.jumpMm(), actual.jumpMm(), 1e-9),
                () -> assertEquals(expected.strokes(), actual.strokes()),
                () -> assertEquals(expected.jumps(), actual.jumps()),
                () -> assertEquals(expected.turning(), actual.turning(), 1e-9),
                () -> assertEquals(expected.marking(), actual.marking(), 1e-12),
                () -> assertEquals(expected.jumping(), actual.jumping(), 1e-12),
                () -> assertEquals(expected.settling(), actual.settling(), 1e-12));
    }

    @Test
    void twoLinesToAndFro() {
        // 2 x 10 mm at 1000 mm/s = 0.020; one jump of 5 mm at 5000 mm/s = 0.001 and 0.0005 to settle; 2 strokes x
        // 0.0003.
        BeamPath path = strokes(xy(0, 0, 10, 0), xy(10, 5, 0, 5));
        Tally tally = new TimeModel(Given.machine(5000, 0.0005, 0.0003, 0)).measure(path, Given.follow(1000, 1));
        assertEquals(0.0221, tally.seconds(), 1e-12);
        assertTally(new Tally(20, 5, 2, 1, 0, 0.02, 0.001, 0.0011), tally);
    }

    @Test
    void hatchOfARectangle() {
        // 20 x 10 mm at 0.05: 200 lines of 20 mm = 4 s at 1000 mm/s; 199 jumps of 0.05 mm at 5000 mm/s = 0.00199 s and
        // 199 x 0.0003 = 0.0597 s to settle; 200 strokes x 0.0002 = 0.04 s. Sum 4.10169.
        BeamPath path =
                new Tracer().trace(Given.fill(0.05, 0), List.of(Given.engraved(Given.box(20, 10), FillRule.NON_ZERO)));
        Tally tally = new TimeModel(Given.machine(5000, 0.0003, 0.0002, 0)).measure(path, Given.fill(0.05, 0));
        assertAll(
                () -> assertEquals(200, tally.strokes()),
                () -> assertEquals(4000, tally.markMm(), 1e-9),
                () -> assertEquals(9.95, tally.jumpMm(), 1e-9),
                () -> assertEquals(4.101690, tally.seconds(), 1e-9));
    }

    @Test
    void theLetterH() {
        // Left stem down, right stem down, bar: 10 + 10 + 6 = 26 mm = 0.026 s. Jumps from (0, 0) to (6, 10): sqrt(136)
        // =
        // 11.6619, from (6, 0) to (0, 5): sqrt(61) = 7.8102; 19.4721 mm = 0.00389443 s; 2 x 0.0005 + 3 x 0.0003 =
        // 0.0019.
        BeamPath path = strokes(xy(0, 10, 0, 0), xy(6, 10, 6, 0), xy(0, 5, 6, 5));
        Tally tally = new TimeModel(Given.machine(5000, 0.0005, 0.0003, 0)).measure(path, Given.follow(1000, 1));
        assertEquals(0.03179443, tally.seconds(), 5e-9);
    }

    @Test
    void aClosedSquareHasFourCorners() {
        // 4 x 10 mm at 500 mm/s = 0.08 s; 4 turns of 90 degrees at 0.0004 s for 180 = 4 x 0.0002 = 0.0008 s; laser on
        // 0.0001.
        BeamPath path = new Tracer().trace(Given.follow(500, 1), List.of(Given.followed(Given.box(10, 10))));
        Tally tally = new TimeModel(Given.machine(4000, 0.0005, 0.0001, 0.0004)).measure(path, Given.follow(500, 1));
        assertEquals(0.0809, tally.seconds(), 1e-12);
        assertEquals(0.0808, tally.marking(), 1e-12);
    }

    @Test
    void anOpenZigzagHasCornersOnlyInside() {
        // (0,0) (3,4) (6,0): 5 + 5 mm at 100 mm/s = 0.1 s; the turn is 2 atan(4/3) = 106.2602 degrees: 0.0009 x
        // 0.590335 =
        // 0.000531301 s; laser on 0.0002.
        BeamPath path = strokes(xy(0, 0, 3, 4, 6, 0));
        Tally tally = new TimeModel(Given.machine(4000, 0.0005, 0.0002, 0.0009)).measure(path, Given.follow(100, 1));
        assertEquals(0.100731301, tally.seconds(), 1e-9);
    }

    @Test
    void passesRepeatAndTheJumpBackCounts() {
        // A line of 12 mm, 3 passes at 600 mm/s: 3 x 0.02 = 0.06 s; 2 jumps back of 12 mm at 4000 mm/s = 0.006 s and 2
        // x
        // 0.0005 = 0.001 s; 3 x 0.0002 = 0.0006 s. Sum 0.0676.
        Step step = Given.follow(600, 3);
        BeamPath path = new Tracer().trace(step, List.of(Given.followed(Given.line(0, 0, 12, 0))));
        Tally tally = new TimeModel(Given.machine(4000, 0.0005, 0.0002, 0.0009)).measure(path, step);
        assertEquals(0.0676, tally.seconds(), 1e-12);
        assertEquals(36, tally.markMm(), 1e-12);
    }

    @Test
    void aClosedOutlineRepeatsWithoutAJump() {
        // 3 passes of a square of 4 x 10 mm at 1000 mm/s: 0.12 s, 3 x 0.0002 to switch on, no jump between.
        Step step = Given.follow(1000, 3);
        BeamPath path = new Tracer().trace(step, List.of(Given.followed(Given.box(10, 10))));
        Tally tally = new TimeModel(Given.machine(4000, 0.0005, 0.0002, 0)).measure(path, step);
        assertTally(new Tally(120, 0, 3, 0, 1080, 0.12, 0, 0.0006), tally);
    }

    @Test
    void aJumpOfNoLengthCostsNothing() {
        TimeModel model = new TimeModel(Given.machine(5000, 0.0005, 0, 0));
        assertEquals(Tally.ZERO, model.jump(new Point(3, 4), new Point(3, 4)));
        // 5 mm at 5000 mm/s and 0.0005 to settle.
        assertEquals(0.0015, model.jump(new Point(0, 0), new Point(3, 4)).seconds(), 1e-12);
    }

    @Test
    void aTallyIsTheSumOfItsParts() {
        Machine machine = Given.machine(5000, 0.0005, 0.0003, 0.0004);
        TimeModel model = new TimeModel(machine);
        Step step = Given.fill(0.1, 30, 90, 2, Pattern.LINES);
        Mark mark = Given.engraved(Given.circle(1, 2, 5), FillRule.NON_ZERO);
        BeamPath path = new Tracer().trace(step, List.of(mark));
        Strokes first = path.passes().get(0);
        Strokes second = path.passes().get(1);
        Tally sum = Arrays.asList(
                        model.measure(first, step.speed()),
                        model.jump(first.last(), second.first()),
                        model.measure(second, step.speed()))
                .stream()
                .reduce(Tally.ZERO, Tally::plus);
        assertEquals(sum.seconds(), model.measure(path, step).seconds(), 1e-12);
    }
}
