package dev.quoin.plate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Given a tray of two rows of three, in a file that lists its slots in no order, then they are filled like this. */
class FillOrderTest {
    @ParameterizedTest
    @CsvSource({
        "ROWS, A1 A2 A3 B1 B2 B3",
        "COLUMNS, A1 B1 A2 B2 A3 B3",
        "SERPENTINE, A1 A2 A3 B3 B2 B1",
    })
    void slotsAreFilledInThisOrder(FillOrder order, String slots) {
        List<Placement> shuffled = new ArrayList<>(Trays.tray(2, 3));
        Collections.shuffle(shuffled, new Random(3));
        assertEquals(slots, Trays.ids(order.sort(shuffled)));
    }

    @Test
    void theFilesOwnOrderIsKept() {
        List<Placement> reversed = new ArrayList<>(Trays.tray(2, 3));
        Collections.reverse(reversed);
        assertEquals("B3 B2 B1 A3 A2 A1", Trays.ids(FillOrder.FILE.sort(reversed)));
    }

    @Test
    void fromTheCentreOutwardsEquallyFarSlotsKeepTheFilesOrder() {
        assertEquals("B2 A2 B1 B3 C2 A1 A3 C1 C3", Trays.ids(FillOrder.CENTRE_OUT.sort(Trays.tray(3, 3))));
    }
}
