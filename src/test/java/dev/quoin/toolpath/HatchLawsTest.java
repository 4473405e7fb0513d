package dev.quoin.toolpath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.art.Mark;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import dev.quoin.shop.EdgePass;
import dev.quoin.shop.Machine;
import dev.quoin.shop.Pattern;
import dev.quoin.shop.Step;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** What holds for every hatch and every time. */
class HatchLawsTest {
    private static final double SPACING = 0.03;

    private static BeamPath trace(Step step, Path path) {
        return new Tracer().trace(step, List.of(Given.engraved(path, FillRule.EVEN_ODD)));
    }

    private static double seconds(Machine machine, BeamPath path, Step step) {
        return new TimeModel(machine).measure(path, step).seconds();
    }

    /** A ring with a bar beside it, off the centre. */
    private static Path shape(double x, double y, double r) {
        return Path.builder()
                .append(Given.circle(x, y, r))
                .append(Given.circle(x + r / 4, y, r / 2))
                .append(Given.box(x + 1.5 * r, y - 1, x + 2.5 * r, y + 2))
                .build();
    }

    @Property(tries = 100, seed = "2026")
    void lengthTimesSpacingIsTheArea(
            @ForAll @DoubleRange(min = 0.7, max = 6) double r,
            @ForAll @DoubleRange(min = -5, max = 5) double x,
            @ForAll @DoubleRange(min = 0, max = 360) double angle) {
        double exact = Math.PI * r * r * 3 / 4 + 3 * r;
        for (Pattern pattern : Pattern.values()) {
            Step step = Given.fill(SPACING, angle, 0, 1, pattern);
            double area = trace(step, shape(x, 1, r)).passes().get(0).length() * SPACING;
            assertEquals(exact, area, 0.005 * exact);
        }
    }

    @Property(tries = 50, seed = "2026")
    void shapeAndAngleTurnTogether(
            @ForAll @DoubleRange(min = -180, max = 180) double turn,
            @ForAll @DoubleRange(min = 0, max = 180) double angle) {
        Affine move = Affine.rotate(turn);
        for (Pattern pattern : Pattern.values()) {
            Strokes plain = trace(Given.fill(0.2, angle, 0, 1, pattern), shape(1, 1, 3))
                    .passes()
                    .get(0);
            Path turnedShape = shape(1, 1, 3).transform(move);
            Strokes turned = trace(Given.fill(0.2, angle + turn, 0, 1, pattern), turnedShape)
                    .passes()
                    .get(0);
            assertEquals(plain.count(), turned.count());
            assertEquals(plain.length(), turned.length(), 1e-6);
            if (pattern == Pattern.LINES) {
                for (int p = 0; p < plain.end(plain.count() - 1); p++) {
                    assertEquals(move.x(plain.x(p), plain.y(p)), turned.x(p), 1e-6);
                    assertEquals(move.y(plain.x(p), plain.y(p)), turned.y(p), 1e-6);
                }
            }
        }
    }

    @Property(tries = 50, seed = "2026")
    void bothPatternsMarkTheSameLength(@ForAll @DoubleRange(min = 0, max = 180) double angle) {
        double lines =
                trace(Given.fill(0.1, angle), shape(0, 0, 3)).passes().get(0).length();
        Step regions = Given.fill(0.1, angle, 0, 1, Pattern.REGIONS);
        assertEquals(lines, trace(regions, shape(0, 0, 3)).passes().get(0).length(), 1e-9 * lines);
    }

    @Property(tries = 50, seed = "2026")
    void theTrueEdgeSurroundsWhatIsHatched(@ForAll long seed, @ForAll FillRule rule) {
        // A polygon that crosses itself at random, and a disc over it.
        double[] xy = new Random(seed).doubles(14, -5, 5).toArray();
        List<Mark> marks =
                List.of(Given.engraved(Given.ring(xy), rule), Given.engraved(Given.circle(2, 1, 1), FillRule.NON_ZERO));
        Strokes plain = new Tracer().trace(Given.fill(0.1, 0), marks).passes().get(0);
        BeamPath edged = new Tracer().trace(Given.edged(0.1, 0, EdgePass.LAST), marks);
        assertEquals(plain.length(), edged.passes().get(0).length(), 1e-6);
    }

    @Property(tries = 50, seed = "2026")
    void anInsetKeepsItsDistance(@ForAll long seed, @ForAll @DoubleRange(min = 0.05, max = 0.6) double inset) {
        double[] xy = new Random(seed).doubles(14, -5, 5).toArray();
        Path ring = Given.ring(xy);
        Strokes lines = Given.strokes(new Tracer()
                .trace(Given.edged(0.1, inset, EdgePass.NONE), List.of(Given.engraved(ring, FillRule.NON_ZERO))));
        // A line that crosses itself is no edge where the rule fills both of its sides: so the true edge is asked.
        List<Polyline> edge = Edge.inside(List.of(new Cover(ring.flatten(1), FillRule.NON_ZERO)), 0, 0.005)
                .outline();
        for (int p = 0; p < (lines.isEmpty() ? 0 : lines.end(lines.count() - 1)); p++) {
            double x = lines.x(p);
            double y = lines.y(p);
            double nearest = edge.stream()
                    .mapToDouble(chain -> Given.distance(chain, x, y))
                    .min()
                    .orElseThrow();
            assertTrue(nearest > inset - 0.006, nearest + " mm from the edge, inset " + inset);
        }
    }

    @Example
    void aWideInsetKeepsItsDistanceToo() {
        anInsetKeepsItsDistance(949203, 0.59);
    }

    @Property(tries = 50, seed = "2026")
    void halfTheSpeedsTakeTwiceTheTimeWithoutDelays(
            @ForAll @DoubleRange(min = 10, max = 5000) double speed,
            @ForAll @DoubleRange(min = 10, max = 9000) double jumpSpeed) {
        BeamPath path = trace(Given.fill(0.2, 20), shape(0, 0, 3));
        double fast = seconds(Given.machine(jumpSpeed, 0, 0, 0), path, Given.follow(speed, 1));
        double slow = seconds(Given.machine(jumpSpeed / 2, 0, 0, 0), path, Given.follow(speed / 2, 1));
        assertEquals(2 * fast, slow, 1e-9 * slow);
    }

    @Property(tries = 50, seed = "2026")
    void twiceTheSizeTakesTwiceTheTimeToFollowAndFourTimesToFill(@ForAll @DoubleRange(min = 1, max = 4) double r) {
        Machine machine = Given.machine(4000, 0, 0, 0);
        Path small = shape(0, 0, r);
        Path large = small.transform(Affine.scale(2, 2));
        // Curves are cut into lines twice as finely, so that the lines are the same.
        Tracer fine = new Tracer(0.001);
        Tracer coarse = new Tracer(0.002);
        Step follow = Given.follow(500, 1);
        double followed = seconds(machine, fine.trace(follow, List.of(Given.followed(small))), follow);
        double followedLarge = seconds(machine, coarse.trace(follow, List.of(Given.followed(large))), follow);
        assertEquals(2 * followed, followedLarge, 1e-9 * followedLarge);

        Step fill = Given.fill(0.02, 0);
        Mark filled = Given.engraved(small, FillRule.EVEN_ODD);
        Mark filledLarge = Given.engraved(large, FillRule.EVEN_ODD);
        double mm = fine.trace(fill, List.of(filled)).passes().get(0).length();
        assertEquals(
                4 * mm, coarse.trace(fill, List.of(filledLarge)).passes().get(0).length(), 0.01 * 4 * mm);
    }

    @Property(tries = 50, seed = "2026")
    void anItemTakesTheSumOfItsSteps(@ForAll @DoubleRange(min = 1, max = 4) double r) {
        // Two copies far apart: the strokes of each, and the one jump between them.
        TimeModel model = new TimeModel(Given.machine(4000, 0.0004, 0.0002, 0.0005));
        Step step = Given.follow(500, 1);
        Path left = Given.circle(-20, 0, r);
        Path right = Given.circle(20, 0, r);
        BeamPath one = new Tracer().trace(step, List.of(Given.followed(left)));
        BeamPath other = new Tracer().trace(step, List.of(Given.followed(right)));
        BeamPath both = new Tracer().trace(step, List.of(Given.followed(left), Given.followed(right)));
        Tally sum = model.measure(one, step).plus(model.measure(other, step));
        Tally jump = model.measure(both, step);
        assertEquals(sum.marking(), jump.marking(), 1e-12);
        assertEquals(sum.seconds() + jump.jumpMm() / 4000 + 0.0004, jump.seconds(), 1e-9);
    }
}
