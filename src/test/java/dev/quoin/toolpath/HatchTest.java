package dev.quoin.toolpath;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.art.Mark;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import dev.quoin.shop.EdgePass;
import dev.quoin.shop.Pattern;
import dev.quoin.shop.Step;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a fill step makes of areas. */
class HatchTest {
    private static final double SPACING = 0.05;

    private static BeamPath trace(Step step, Mark... marks) {
        return new Tracer().trace(step, List.of(marks));
    }

    private static double covered(BeamPath path) {
        return path.passes().get(0).length() * SPACING;
    }

    private static Path twoBoxes() {
        return Path.builder()
                .append(Given.box(-3, -3, 1, 1))
                .append(Given.box(-1, -1, 3, 3))
                .build();
    }

    @Test
    void theRuleDecidesWhereBoxesOverlap() {
        // Two boxes of 16 mm2 with 4 mm2 in common.
        Step step = Given.fill(SPACING, 0);
        assertEquals(28, covered(trace(step, Given.engraved(twoBoxes(), FillRule.NON_ZERO))), 1e-9);
        assertEquals(24, covered(trace(step, Given.engraved(twoBoxes(), FillRule.EVEN_ODD))), 1e-9);
    }

    @Test
    void aHoleStaysEmptyUnderEitherRule() {
        Path outer = Given.box(4, 4);
        Path ring = Path.builder()
                .append(outer)
                .moveTo(-1, -1)
                .lineTo(-1, 1)
                .lineTo(1, 1)
                .lineTo(1, -1)
                .close()
                .build();
        for (FillRule rule : FillRule.values()) {
            assertEquals(12, covered(trace(Given.fill(SPACING, 90), Given.engraved(ring, rule))), 1e-9);
        }
    }

    @Test
    void marksThatOverlapAreCoveredOnce() {
        Mark one = Given.engraved(Given.box(-3, -3, 1, 1), FillRule.NON_ZERO);
        Mark two = Given.engraved(Given.box(-1, -1, 3, 3), FillRule.EVEN_ODD);
        assertEquals(28, covered(trace(Given.fill(SPACING, 0), one, two)), 1e-9);
    }

    @Test
    void marksThatTouchAreCrossedInOneStroke() {
        Mark left = Given.engraved(Given.box(-2, 0, 0, 1), FillRule.NON_ZERO);
        Mark right = Given.engraved(Given.box(0, 0, 2, 1), FillRule.NON_ZERO);
        assertEquals(
                20, trace(Given.fill(SPACING, 0), left, right).passes().get(0).count());
    }

    @Test
    void manyMarksAreCoveredLikeOnePathOfThemAll() {
        Random random = new Random(20261129);
        for (int i = 0; i < 50; i++) {
            List<Path> boxes = Stream.generate(() -> box(random))
                    .limit(1 + random.nextInt(20))
                    .toList();
            Path.Builder all = Path.builder();
            boxes.forEach(all::append);
            Step step = Given.fill(0.1, random.nextInt(360));
            Mark[] marks = boxes.stream()
                    .map(box -> Given.engraved(box, FillRule.NON_ZERO))
                    .toArray(Mark[]::new);
            Strokes together = trace(step, Given.engraved(all.build(), FillRule.NON_ZERO))
                    .passes()
                    .get(0);
            Strokes joined = trace(step, marks).passes().get(0);
            assertEquals(together.count(), joined.count());
            assertEquals(together.length(), joined.length(), 1e-9);
        }
    }

    private static Path box(Random random) {
        double x = 10 * random.nextDouble();
        double y = 10 * random.nextDouble();
        return Given.box(x, y, x + 0.2 + 4 * random.nextDouble(), y + 0.2 + 4 * random.nextDouble());
    }

    /** More crossings on each line than are sorted by moving each past its neighbours. */
    @Test
    void aThousandTeethOfACombMayBeDrawnInAnyOrder() {
        List<Integer> teeth = new ArrayList<>(IntStream.range(0, 1000).boxed().toList());
        Collections.shuffle(teeth, new Random(5));
        Path.Builder comb = Path.builder();
        teeth.forEach(tooth -> comb.append(Given.box(0.01 * tooth, -0.5, 0.01 * tooth + 0.004, 0.5)));
        BeamPath path = trace(Given.fill(SPACING, 0), Given.engraved(comb.build(), FillRule.NON_ZERO));
        assertEquals(20 * 1000, path.passes().get(0).count());
        assertEquals(4, covered(path), 1e-9);
    }

    @Test
    void onlyMarksOfTheStepsProcessAreTreated() {
        Mark other = new Mark(
                "cut",
                Given.box(4, 4),
                Given.engraved(Given.box(4, 4), FillRule.NON_ZERO).area());
        assertSame(BeamPath.EMPTY, trace(Given.fill(SPACING, 0), other));
    }

    @Test
    void linesRunToAndFroFromBelow() {
        BeamPath path = trace(Given.fill(1, 0), Given.engraved(Given.box(4, 3), FillRule.NON_ZERO));
        Strokes lines = path.passes().get(0);
        // Lines stand at whole spacings and a half from the centre: -1.5 lies on the lower edge and counts, 1.5 does
        // not.
        assertAll(
                () -> assertEquals(3, lines.count()),
                () -> assertEquals(-1.5, lines.y(0)),
                () -> assertEquals(-2, lines.x(0), 1e-12),
                () -> assertEquals(2, lines.x(2), 1e-12),
                () -> assertEquals(-2, lines.x(4), 1e-12));
    }

    @Test
    void theAngleTurnsWithEachPassAndEqualPassesAreShared() {
        Step step = Given.fill(0.5, 45, 180, 3, Pattern.LINES);
        BeamPath path = trace(step, Given.engraved(Given.circle(0, 0, 3), FillRule.NON_ZERO));
        assertEquals(3, path.passes().size());
        assertSame(path.passes().get(0), path.passes().get(2));
        Strokes first = path.passes().get(0);
        double angle = Math.toDegrees(Math.atan2(first.y(1) - first.y(0), first.x(1) - first.x(0)));
        assertEquals(45, angle, 1e-6);
    }

    @Test
    void regionsAreFinishedOneByOne() {
        Path columns = Path.builder()
                .append(Given.box(-3, -2, -2, 2))
                .append(Given.box(2, -2, 3, 2))
                .build();
        Mark mark = Given.engraved(columns, FillRule.NON_ZERO);
        BeamPath across = trace(Given.fill(0.1, 0), mark);
        BeamPath regions = trace(Given.fill(0.1, 0, 0, 1, Pattern.REGIONS), mark);
        // Two columns of 40 lines: across, each line jumps the gap of 4 mm; by regions, one jump leads over.
        assertEquals(80, across.passes().get(0).count());
        assertEquals(80, regions.passes().get(0).count());
        assertEquals(40 * 4 + 39 * 0.1, Jumps.between(across.passes().get(0)).mm(), 1e-9);
        assertTrue(Jumps.between(regions.passes().get(0)).mm() < 2 * 39 * 0.1 + 7);
    }

    @Test
    void aRingFallsIntoFourRegions() {
        // Below the hole, left of it, right of it, above it.
        Path ring =
                Path.builder().append(Given.box(6, 6)).append(Given.box(2, 2)).build();
        Grid grid = Grid.at(0, 0.1);
        Spans spans = Spans.of(new Hatch(List.of(new Cover(ring.flatten(0.005), FillRule.EVEN_ODD)), grid));
        assertEquals(4, Regions.of(spans).size());
    }

    @Test
    void anInsetKeepsAwayFromTheEdge() {
        Mark mark = Given.engraved(twoBoxes(), FillRule.NON_ZERO);
        // Each box less 0.25 all round is 3.5 x 3.5, and they overlap by 1.5 x 1.5. At the two inward corners the strip
        // is
        // round outside, which leaves a square of 0.25 less its quarter circle more.
        double expected = 2 * 12.25 - 2.25 + 2 * (1 - Math.PI / 4) * 0.25 * 0.25;
        assertEquals(expected, covered(trace(Given.edged(SPACING, 0.25, EdgePass.NONE), mark)), 0.0005 * expected);
    }

    @Test
    void anInsetThatSwallowsTheWholeAreaLeavesNothing() {
        Mark mark = Given.engraved(Given.box(1, 1), FillRule.NON_ZERO);
        assertTrue(trace(Given.edged(SPACING, 0.6, EdgePass.LAST), mark).isEmpty());
    }

    @Test
    void theEdgeIsFollowedOnceBeforeOrAfter() {
        Mark mark = Given.engraved(twoBoxes(), FillRule.NON_ZERO);
        BeamPath first = trace(Given.edged(SPACING, 0, EdgePass.FIRST), mark);
        BeamPath last = trace(Given.edged(SPACING, 0, EdgePass.LAST), mark);
        // Around both boxes: 2 x 16 mm less the 8 mm that lie inside.
        assertAll(
                () -> assertEquals(2, first.passes().size()),
                () -> assertEquals(1, first.passes().get(0).count()),
                () -> assertEquals(24, first.passes().get(0).length(), 1e-9),
                () -> assertEquals(24, last.passes().get(1).length(), 1e-9),
                () -> assertEquals(28, last.passes().get(0).length() * SPACING, 1e-9));
    }
}
