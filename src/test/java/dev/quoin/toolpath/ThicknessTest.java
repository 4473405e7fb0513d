package dev.quoin.toolpath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.geometry.Area;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** A part is as thin as the widest circle that it holds. */
class ThicknessTest {
    private static Area area(Path... pieces) {
        Path.Builder path = Path.builder();
        for (Path piece : pieces) {
            path.append(piece);
        }
        return new Area(path.build(), FillRule.EVEN_ODD);
    }

    @Test
    void aRingIsAsThinAsItsBand() {
        Area ring = area(Given.circle(0, 0, 5), Given.circle(0, 0, 4.9));
        assertEquals(0.1, Thickness.thinnest(ring, 0.2).orElseThrow(), Thickness.ACCURACY + 0.02);
        assertTrue(Thickness.thinnest(ring, 0.05).isEmpty());
    }

    @Test
    void theThinnestOfSeveralPartsCounts() {
        Area both = area(Given.box(0, 0, 10, 10), Given.box(20, 0, 30, 0.06));
        assertEquals(0.06, Thickness.thinnest(both, 0.1).orElseThrow(), Thickness.ACCURACY);
        assertTrue(Thickness.mean(both) > 0.1, "a large part hides a thin one from the quick measure");
    }

    @Test
    void aTaperingTipIsNoThinPart() {
        Area star = area(Given.ring(0, 0, 10, 0, 5, 8));
        assertTrue(Thickness.thinnest(star, 1).isEmpty());
    }

    @Property(tries = 100, seed = "2026")
    void theQuickMeasureOfABoxIsNeverMoreThanItsWidth(
            @ForAll @DoubleRange(min = 0.02, max = 1) double width,
            @ForAll @DoubleRange(min = 1, max = 20) double length) {
        Area box = area(Given.box(0, 0, length, width));
        assertTrue(Thickness.mean(box) <= width);
        assertEquals(width, Thickness.thinnest(box, 2).orElseThrow(), Thickness.ACCURACY);
    }
}
