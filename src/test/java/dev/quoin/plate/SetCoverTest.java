package dev.quoin.plate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** The fewest sets that cover, against every choice of sets on small cases. */
class SetCoverTest {
    private static BitSet set(int... elements) {
        BitSet set = new BitSet();
        for (int element : elements) {
            set.set(element);
        }
        return set;
    }

    @Test
    void theGreedyChoiceIsNotTakenWhereFewerDo() {
        // Greedy takes the four in the middle first, and then needs both others for what is left.
        List<BitSet> sets = List.of(set(1, 2, 3, 4), set(0, 1, 2), set(3, 4, 5));
        SetCover.Cover cover = SetCover.of(sets, 6);
        assertEquals(List.of(1, 2), cover.sets());
        assertTrue(cover.proven());
    }

    @Test
    void whatNoSetHoldsIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> SetCover.of(List.of(set(0)), 2));
    }

    @Test
    void nothingNeedsNoSet() {
        assertEquals(List.of(), SetCover.of(List.of(set()), 0).sets());
    }

    @Property(tries = 500, seed = "7")
    void noChoiceHasFewer(
            @ForAll @Size(min = 1, max = 9) List<@IntRange(min = 1, max = 4095) Integer> drawn,
            @ForAll @IntRange(min = 1, max = 12) int elements) {
        List<BitSet> sets = new ArrayList<>();
        drawn.forEach(bits -> sets.add(BitSet.valueOf(new long[] {bits & (1L << elements) - 1})));
        int least = bruteForce(sets, elements);
        Assume.that(least > 0);
        SetCover.Cover cover = SetCover.of(sets, elements);
        BitSet covered = new BitSet();
        cover.sets().forEach(set -> covered.or(sets.get(set)));
        assertEquals(elements, covered.cardinality());
        assertEquals(least, cover.sets().size());
        assertTrue(cover.proven());
    }

    /** The fewest of all choices that cover; 0 if none does. */
    private static int bruteForce(List<BitSet> sets, int elements) {
        int least = 0;
        for (int choice = 1; choice < 1 << sets.size(); choice++) {
            BitSet covered = new BitSet();
            for (int set = 0; set < sets.size(); set++) {
                if ((choice & 1 << set) != 0) {
                    covered.or(sets.get(set));
                }
            }
            int count = Integer.bitCount(choice);
            if (covered.cardinality() == elements && (least == 0 || count < least)) {
                least = count;
            }
        }
        return least;
    }
}
