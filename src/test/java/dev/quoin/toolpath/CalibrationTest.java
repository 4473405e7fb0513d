package dev.quoin.toolpath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.art.Mark;
import dev.quoin.geometry.FillRule;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Machine;
import dev.quoin.shop.Pattern;
import dev.quoin.shop.Step;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Given simulated machines whose delays are unknown, and clocks that are off by 2 %, then the next plates are foretold. */
class CalibrationTest {
    private static final Machine ASSUMED = Given.machine(5000, 350e-6, 320e-6, 90e-6, 4.5, 20);
    private static final double NOISE = 0.02;

    private final Problems problems = new Problems();

    private static Machine unknown(Random random) {
        return Given.machine(
                ASSUMED.jumpSpeed() * factor(random),
                ASSUMED.jumpSettle() * factor(random),
                ASSUMED.laserOn() * factor(random),
                ASSUMED.corner() * factor(random),
                ASSUMED.load() * factor(random),
                ASSUMED.plate() * factor(random));
    }

    /** From a half to twice. */
    private static double factor(Random random) {
        return Math.pow(2, 2 * random.nextDouble() - 1);
    }

    /** What is marked on a plate: a hatched box and squares along their edges, of many sizes. */
    private record Work(BeamPath fill, Step filling, BeamPath outline, Step following, int items) {
        static Work random(Random random) {
            double spacing = 0.03 + 0.2 * random.nextDouble();
            double side = 2 + 15 * random.nextDouble();
            Step fill = Given.fill(spacing, 45, 90, 1 + random.nextInt(3), Pattern.LINES);
            Step follow = Given.follow(300 + 1000 * random.nextDouble(), 1 + random.nextInt(20));
            List<Mark> squares = new ArrayList<>();
            for (int i = 0; i < 1 + random.nextInt(30); i++) {
                double x = 20 * random.nextDouble();
                squares.add(Given.followed(Given.box(x, i, x + 0.8, i + 0.8)));
            }
            Tracer tracer = new Tracer();
            Mark box = Given.engraved(Given.box(side, side / 2), FillRule.NON_ZERO);
            return new Work(
                    tracer.trace(fill, List.of(box)),
                    fill,
                    tracer.trace(follow, squares),
                    follow,
                    1 + random.nextInt(40));
        }

        Tally tally(Machine machine) {
            TimeModel model = new TimeModel(machine);
            Tally item = model.measure(fill, filling).plus(model.measure(outline, following));
            Tally sum = Tally.ZERO;
            for (int i = 0; i < items; i++) {
                sum = sum.plus(item);
            }
            return sum;
        }

        double seconds(Machine machine) {
            return tally(machine).seconds() + items * machine.load() + machine.plate();
        }

        MeasuredPlate measured(String name, double seconds) {
            return MeasuredPlate.of(name, tally(ASSUMED), ASSUMED, items, 1, 0, seconds);
        }
    }

    private static List<MeasuredPlate> plates(int count, Machine truth, double noise, Random random) {
        List<MeasuredPlate> plates = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            Work work = Work.random(random);
            plates.add(work.measured("plate " + i, work.seconds(truth) * (1 + noise * random.nextGaussian())));
        }
        return plates;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void theNextPlatesAreForetoldWithinThreePercent(long seed) {
        Random random = new Random(seed);
        Machine truth = unknown(random);
        Calibrated fit = new Calibration(ASSUMED, plates(40, truth, NOISE, random), problems)
                .fit()
                .orElseThrow();
        for (int i = 0; i < 10; i++) {
            Work next = Work.random(random);
            double seconds = next.seconds(truth);
            assertEquals(seconds, fit.seconds(next.measured("next", seconds)), 0.03 * seconds);
        }
        assertTrue(fit.after().typical() < fit.before().typical());
        assertTrue(fit.leaveOneOut().typical() >= fit.after().typical());
    }

    @Test
    void anExactClockShowsTheDelaysThemselvesIfThoseThatAreHeldAreRight() {
        Machine truth = Given.machine(5000, 500e-6, 320e-6, 90e-6, 6, 31);
        Calibrated fit = new Calibration(ASSUMED, plates(30, truth, 0, new Random(5)), problems)
                .fit()
                .orElseThrow();
        for (Delay delay : Delay.values()) {
            if (!fit.held().containsKey(delay)) {
                assertEquals(delay.of(truth), fit.delays().get(delay), 0.001 * delay.of(truth), fit.toString());
            }
        }
        assertTrue(fit.after().largest() < 1e-4, fit.toString());
        assertFalse(fit.held().containsKey(Delay.LOAD));
        assertFalse(fit.held().containsKey(Delay.PLATE));
    }

    @Test
    void noDelayIsEverBelowZero() {
        Machine truth = Given.machine(5000, 0, 0, 0, 2, 0);
        Optional<Calibrated> fit = new Calibration(ASSUMED, plates(20, truth, NOISE, new Random(3)), problems).fit();
        assertTrue(fit.orElseThrow().delays().values().stream().allMatch(seconds -> seconds >= 0));
    }

    @Test
    void aDelayThatIsHardlyPresentIsHeldAndSaysWhy() {
        List<MeasuredPlate> plates = new ArrayList<>();
        for (int i = 1; i <= 12; i++) {
            plates.add(new MeasuredPlate(
                    "plate " + i, 100 + 7 * i % 31, 1000 * i, 900 * (i % 5), 0, 0, i % 4 + 1, 1, 0, 120 + 9 * i));
        }
        DelayChoice choice = DelayChoice.of(ASSUMED, plates);
        assertEquals("it is only 0 % of the plates' times", choice.held().get(Delay.CORNER));
        assertEquals("it is only 0 % of the plates' times", choice.held().get(Delay.JUMP_MM));
    }

    @Test
    void delaysThatAlwaysGoTogetherAreNotToldApart() {
        List<MeasuredPlate> plates = new ArrayList<>();
        for (int i = 1; i <= 12; i++) {
            plates.add(new MeasuredPlate(
                    "plate " + i, 10, 20_000 * i, 20_000 * i, 0, 0, 1 + i * i % 7, 1, 0, 40 + 12 * i));
        }
        DelayChoice choice = DelayChoice.of(ASSUMED, plates);
        assertEquals(
                "on these plates it cannot be told from jump_settle_us",
                choice.held().get(Delay.STROKE));
    }

    @Test
    void tooFewPlatesAreRefused() {
        assertTrue(new Calibration(ASSUMED, plates(2, ASSUMED, 0, new Random(1)), problems)
                .fit()
                .isEmpty());
        assertTrue(problems.sorted().get(0).toString().contains("2 plates are measured, which is too few"));
    }

    @Test
    void platesAllAlikeAreRefused() {
        MeasuredPlate one = plates(1, ASSUMED, 0, new Random(1)).get(0);
        assertTrue(new Calibration(ASSUMED, Collections.nCopies(12, one), problems)
                .fit()
                .isEmpty());
        assertTrue(
                problems.sorted().get(0).toString().contains("too alike"),
                problems.sorted().toString());
    }

    @Test
    void aTimeThatNoDelaysExplainIsRefusedByName() {
        List<MeasuredPlate> plates = new ArrayList<>(plates(20, ASSUMED, 0, new Random(1)));
        MeasuredPlate odd = plates.get(7);
        plates.set(
                7,
                new MeasuredPlate(
                        odd.name(),
                        odd.marking(),
                        odd.strokes(),
                        odd.jumps(),
                        odd.jumpMm(),
                        odd.halfTurns(),
                        odd.items(),
                        odd.plates(),
                        odd.shifts(),
                        3 * odd.seconds()));
        assertTrue(new Calibration(ASSUMED, plates, problems).fit().isEmpty());
        assertTrue(
                problems.sorted().toString().contains("plate 8 took"),
                problems.sorted().toString());
    }
}
