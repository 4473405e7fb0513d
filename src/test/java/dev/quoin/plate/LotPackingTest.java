package dev.quoin.plate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Given customers' items and a jig, then these plates. */
class LotPackingTest {
    @Test
    void aCustomerWhoFitsIsNotSplitAndEarlierCustomersComeFirst() {
        PackedLots packed = LotPacking.pack(lots(3, 2, 2, 1), Trays.slots(4));
        assertEquals(List.of(List.of(1, 2, 3, 8), List.of(4, 5, 6, 7)), packed.loads());
        assertEquals(2, packed.bound());
    }

    @Test
    void aCustomerLargerThanAPlateFillsWholePlatesAndTheRestIsPacked() {
        PackedLots packed = LotPacking.pack(lots(2, 9, 3), Trays.slots(4));
        assertEquals(
                List.of(List.of(1, 2), List.of(3, 4, 5, 6), List.of(7, 8, 9, 10), List.of(11, 12, 13, 14)),
                packed.loads());
        assertEquals(4, packed.bound());
        assertEquals(1, packed.split());
    }

    @Test
    void aCustomerWhoFillsPlatesExactlyLeavesNoRest() {
        PackedLots packed = LotPacking.pack(lots(8), Trays.slots(4));
        assertEquals(List.of(List.of(1, 2, 3, 4), List.of(5, 6, 7, 8)), packed.loads());
    }

    @Test
    void aPartFilledJigTakesCustomersWhoFitInWhatIsLeft() {
        PackedLots packed = LotPacking.pack(lots(3, 1), Trays.partFilled(1, 4));
        assertEquals(List.of(List.of(4), List.of(1, 2, 3)), packed.loads());
    }

    @Test
    void aPartFilledJigStaysAsItIsWhenNoCustomerFits() {
        PackedLots packed = LotPacking.pack(lots(3, 4), Trays.partFilled(2, 4));
        assertEquals(List.of(List.of(), List.of(1, 2, 3), List.of(4, 5, 6, 7)), packed.loads());
    }

    @Property(tries = 300, seed = "2026")
    void everyItemIsLaidOnceAndNoCustomerIsSplitThatFits(
            @ForAll @Size(min = 1, max = 40) List<@IntRange(min = 1, max = 30) Integer> sizes,
            @ForAll @IntRange(min = 1, max = 12) int slots) {
        List<Lot> lots = lots(sizes.stream().mapToInt(Integer::intValue).toArray());
        PackedLots packed = LotPacking.pack(lots, Trays.slots(slots));
        List<Integer> all =
                packed.loads().stream().flatMap(List::stream).sorted().toList();
        assertEquals(IntStream.rangeClosed(1, all.size()).boxed().toList(), all);
        assertEquals(sizes.stream().mapToInt(Integer::intValue).sum(), all.size());
        assertTrue(packed.loads().stream().allMatch(load -> load.size() <= slots));
        assertTrue(packed.loads().size() >= packed.bound());
        for (Lot lot : lots) {
            long plates = packed.loads().stream()
                    .filter(load -> load.stream().anyMatch(lot.items()::contains))
                    .count();
            assertEquals((lot.size() + slots - 1) / slots, plates);
        }
        packed.loads().forEach(load -> assertItemsOfALotAreNeighbours(load, lots));
    }

    private static void assertItemsOfALotAreNeighbours(List<Integer> load, List<Lot> lots) {
        Set<Integer> seen = new HashSet<>();
        int last = -1;
        for (int item : load) {
            int lot = IntStream.range(0, lots.size())
                    .filter(i -> lots.get(i).items().contains(item))
                    .findFirst()
                    .orElseThrow();
            assertTrue(lot == last || seen.add(lot), "lot " + lot + " lies in two places of " + load);
            last = lot;
        }
    }

    /** Lots of so many items each, numbered through. */
    private static List<Lot> lots(int... sizes) {
        List<Lot> lots = new ArrayList<>();
        int next = 1;
        for (int size : sizes) {
            lots.add(new Lot(IntStream.range(next, next + size).boxed().toList()));
            next += size;
        }
        return lots;
    }
}
