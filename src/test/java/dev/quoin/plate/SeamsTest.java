package dev.quoin.plate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.plate.Extents.Stretch;
import dev.quoin.plate.Seams.Strip;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Where a drawing is cut into strips, against every way to cut small ones. */
class SeamsTest {
    private static List<Stretch> stretches(double... ends) {
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 0; i < ends.length; i += 2) {
            stretches.add(new Stretch(ends[i], ends[i + 1]));
        }
        return stretches;
    }

    @Test
    void seamsRunThroughTheGaps() {
        assertEquals(
                List.of(new Strip(0, 9, false), new Strip(11, 16, false)),
                Seams.of(stretches(0, 4, 5, 9, 11, 16), 10, 0.5));
    }

    @Test
    void whatIsWiderThanAStripIsCutWithAnOverlap() {
        assertEquals(List.of(new Strip(0, 10, true), new Strip(9.5, 15, false)), Seams.of(stretches(0, 15), 10, 0.5));
    }

    @Test
    void aCutThatMustBeIsPlacedSoThatFewerStripsDo() {
        assertEquals(
                List.of(new Strip(0, 10, true), new Strip(9.5, 18, false)), Seams.of(stretches(0, 2, 3, 18), 10, 0.5));
    }

    @Test
    void nothingNeedsNoStrip() {
        assertEquals(List.of(), Seams.of(List.of(), 10, 0.5));
    }

    @Property(tries = 300, seed = "11")
    void noWayOfCuttingIsBetter(
            @ForAll @Size(min = 1, max = 5) List<@IntRange(min = 1, max = 9) Integer> lengths,
            @ForAll @Size(value = 5) List<@IntRange(min = 1, max = 4) Integer> gaps,
            @ForAll @IntRange(min = 3, max = 8) int widest) {
        List<Stretch> stretches = new ArrayList<>();
        int at = 0;
        for (int i = 0; i < lengths.size(); i++) {
            stretches.add(new Stretch(at, at + lengths.get(i)));
            at += lengths.get(i) + gaps.get(i);
        }
        List<Strip> strips = Seams.of(stretches, widest, 1);
        int cuts = (int) strips.stream().filter(Strip::cut).count();
        int[] best = bruteForce(stretches, 0, widest, 1, new HashMap<>());
        assertEquals(best[0], cuts, () -> stretches + " " + strips);
        assertEquals(best[1], strips.size(), () -> stretches + " " + strips);
        strips.forEach(strip -> assertTrue(strip.to() - strip.from() <= widest));
        for (Stretch stretch : stretches) {
            for (double x = stretch.from() + 0.25; x < stretch.to(); x += 0.5) {
                double inked = x;
                assertTrue(strips.stream().anyMatch(strip -> strip.from() <= inked && inked <= strip.to()));
            }
        }
    }

    /** The fewest cuts, and with them the fewest strips, of all ways to end strips at whole numbers. */
    private static int[] bruteForce(
            List<Stretch> stretches, int from, int widest, int overlap, Map<Integer, int[]> known) {
        if (known.containsKey(from)) {
            return known.get(from);
        }
        int[] best = {Integer.MAX_VALUE, Integer.MAX_VALUE};
        for (int end = from + overlap + 1; end <= from + widest; end++) {
            int to = end;
            boolean cut = stretches.stream().anyMatch(stretch -> stretch.from() < to && to < stretch.to());
            int next = cut
                    ? to - overlap
                    : stretches.stream()
                            .mapToInt(stretch -> (int) stretch.from())
                            .filter(start -> start >= to)
                            .findFirst()
                            .orElse(-1);
            int[] rest = next < 0 ? new int[] {0, 0} : bruteForce(stretches, next, widest, overlap, known);
            int[] all = {rest[0] + (cut ? 1 : 0), rest[1] + 1};
            if (all[0] < best[0] || all[0] == best[0] && all[1] < best[1]) {
                best = all;
            }
        }
        known.put(from, best);
        return best;
    }
}
