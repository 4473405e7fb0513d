package dev.quoin.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.NotEmpty;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class ItemsTest {
    @Test
    void withoutAQuantityColumnEachRowIsOnePiece() {
        assertEquals(
                List.of("1:a:1", "2:b:1"),
                told(Items.of(OrderTest.order("n\na\nb\n"), OptionalInt.empty(), new Problems())));
    }

    @Test
    void emptyIsOneAndNoneIsNoted() {
        Problems problems = new Problems();
        Items items = items("n,qty\na,\nb,0\nc, 3 \nd,1\n", problems);
        assertEquals(List.of("1:a:1", "2:c:1", "3:c:2", "4:c:3", "5:d:1"), told(items));
        assertEquals(List.of(), told(items.ofRow(1)));
        assertEquals(List.of("2:c:1", "3:c:2", "4:c:3"), told(items.ofRow(2)));
        assertEquals("4:c:3", told(items.numbered(4)));
        assertEquals(List.of("order.csv:3:2: note: qty: 0, so nothing is made for this row"), told(problems));
    }

    @Test
    void aQuantityIsAWholeNumberUpToTenThousand() {
        Problems problems = new Problems();
        Items items = items("n,qty\na,10000\nb,10001\nc,two\nd,1.5\ne,-1\nf,99999999999\n", problems);
        assertEquals(10_005, items.size());
        assertEquals(
                List.of(
                        "order.csv:3:2: qty: 10001 is more than 10000; split the row, or correct the number",
                        "order.csv:4:2: qty: 'two' is no whole number; "
                                + "write a number from 0 to 10000, or leave the cell empty for 1",
                        "order.csv:5:2: qty: '1.5' is no whole number; "
                                + "write a number from 0 to 10000, or leave the cell empty for 1",
                        "order.csv:6:2: qty: '-1' is no whole number; "
                                + "write a number from 0 to 10000, or leave the cell empty for 1",
                        "order.csv:7:2: qty: '99999999999' is no whole number; "
                                + "write a number from 0 to 10000, or leave the cell empty for 1"),
                told(problems));
    }

    @Test
    void anOrderOfTooManyPiecesIsSplit() {
        Problems problems = new Problems();
        items("n,qty\n" + "a,10000\n".repeat(1001), problems);
        assertEquals(
                List.of("order.csv:1:2: 10010000 pieces in all, more than 10000000; split the order"), told(problems));
    }

    @Test
    void noItemStandsOutsideTheNumbers() {
        Items items = items("n,qty\na,2\n", new Problems());
        assertThrows(IndexOutOfBoundsException.class, () -> items.numbered(0));
        assertThrows(IndexOutOfBoundsException.class, () -> items.numbered(3));
    }

    /** Against the obvious way: a list that is filled row by row. */
    @Property(tries = 200, seed = "2026")
    void numbersRunThroughTheRows(@ForAll @NotEmpty @Size(max = 40) List<@IntRange(max = 4) Integer> quantities) {
        StringBuilder csv = new StringBuilder("n,qty\n");
        List<String> expected = new ArrayList<>();
        for (int row = 0; row < quantities.size(); row++) {
            csv.append('r').append(row).append(',').append(quantities.get(row)).append('\n');
            int name = row;
            IntStream.rangeClosed(1, quantities.get(row))
                    .forEach(copy -> expected.add((expected.size() + 1) + ":r" + name + ":" + copy));
        }
        assertEquals(expected, told(items(csv.toString(), new Problems())));
    }

    private static Items items(String csv, Problems problems) {
        Order order = OrderTest.order(csv);
        return Items.of(order, order.column("qty"), problems);
    }

    private static List<String> told(List<Item> items) {
        return items.stream().map(ItemsTest::told).toList();
    }

    private static String told(Item item) {
        return item.number() + ":" + item.row().cells().get(0) + ":" + item.copy();
    }

    private static List<String> told(Problems problems) {
        return problems.sorted().stream().map(Problem::toString).toList();
    }
}
