package dev.quoin.toolpath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Polyline;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;

/** Where no lines meet, the edge is found without cutting them at each other, and is the same. */
class EdgeTest {
    private static Polyline box(double x0, double y0, double x1, double y1) {
        return new Polyline(new double[] {x0, y0, x1, y0, x1, y1, x0, y1}, true);
    }

    private static Polyline backwards(Polyline chain) {
        double[] xy = new double[2 * chain.size()];
        for (int i = 0; i < chain.size(); i++) {
            xy[2 * i] = chain.x(chain.size() - 1 - i);
            xy[2 * i + 1] = chain.y(chain.size() - 1 - i);
        }
        return new Polyline(xy, true);
    }

    private static List<Rings.Part> parts(FillRule rule, Polyline... chains) {
        return Rings.parts(List.of(new Cover(List.of(chains), rule))).orElseThrow();
    }

    @Test
    void aLetterWithACounterIsOnePartWithAHole() {
        Polyline outer = box(0, 0, 10, 10);
        Polyline inner = backwards(box(2, 2, 8, 8));
        List<Rings.Part> parts = parts(FillRule.NON_ZERO, outer, inner);
        assertEquals(List.of(new Rings.Part(outer, List.of(inner))), parts);
    }

    @Test
    void aBoxInsideAnotherTheSameWayRoundIsNoEdgeUnlessTheRuleIsEvenOdd() {
        Polyline outer = box(0, 0, 10, 10);
        Polyline inner = box(2, 2, 8, 8);
        assertEquals(0, parts(FillRule.NON_ZERO, outer, inner).get(0).holes().size());
        assertEquals(1, parts(FillRule.EVEN_ODD, outer, inner).get(0).holes().size());
    }

    @Test
    void linesThatCrossOrTouchAreLeftToTheLibrary() {
        Polyline square = box(0, 0, 10, 10);
        for (Polyline other : List.of(
                box(5, 5, 15, 15),
                box(10, 0, 20, 10),
                box(10, 10, 20, 20),
                box(10, 4, 12, 6),
                new Polyline(new double[] {2, 2, 8, 2, 2, 8, 8, 8}, true),
                new Polyline(new double[] {2, 2, 8, 2, 4, 2}, true))) {
            Cover cover = new Cover(List.of(square, other), FillRule.NON_ZERO);
            assertTrue(Rings.parts(List.of(cover)).isEmpty(), "with " + other.point(2));
        }
    }

    @Property(tries = 300, seed = "2026")
    void bothWaysGiveTheSameArea(@ForAll Random random) {
        List<Cover> covers = new ArrayList<>();
        for (int c = random.nextInt(3); c >= 0; c--) {
            List<Polyline> chains = new ArrayList<>();
            for (int i = random.nextInt(6); i >= 0; i--) {
                double x = 20 * random.nextDouble();
                double y = 20 * random.nextDouble();
                Polyline box = box(x, y, x + 0.1 + 9 * random.nextDouble(), y + 0.1 + 9 * random.nextDouble());
                chains.add(random.nextBoolean() ? box : backwards(box));
            }
            covers.add(new Cover(chains, random.nextBoolean() ? FillRule.EVEN_ODD : FillRule.NON_ZERO));
        }
        Geometry quick = Edge.faces(covers);
        Geometry thorough = Edge.entangled(covers);
        assertTrue(quick.isValid());
        assertEquals(thorough.getArea(), quick.getArea(), 1e-6);
        assertFalse(quick.symDifference(thorough).getArea() > 1e-6);
    }
}
