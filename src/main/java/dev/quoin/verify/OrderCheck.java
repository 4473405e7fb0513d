package dev.quoin.verify;

import dev.quoin.order.Item;
import dev.quoin.order.Items;
import dev.quoin.order.Order;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.table.Table;
import dev.quoin.table.TableRow;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The items of a section of the run against the order that the run keeps: each item that the order asks for is there, or was left out for an error that the run tells. */
public final class OrderCheck {
    private static final String REMEDY = "prepare the run again";

    private final Order order;
    private final Table items;
    private final Set<String> toldLines = new HashSet<>();
    private final Problems problems;

    /**
     * Sets up.
     *
     * @param order as the run keeps it
     * @param items the section's {@code items.csv}
     * @param told the section's {@code problems.csv}
     */
    public OrderCheck(Order order, Table items, Table told, Problems problems) {
        this.order = order;
        this.items = items;
        this.problems = problems;
        for (TableRow row : told.rows()) {
            RunRow problem = new RunRow(told, row);
            if (problem.text("severity").equals("error") && problem.text("file").equals(order.file())) {
                toldLines.add(problem.text("line"));
            }
        }
    }

    /** Checks the items from a number on, which is 1 but for an extension. */
    public void check(Items expected, int first) {
        Map<Integer, RunRow> rows = new HashMap<>();
        items.rows().forEach(row -> {
            RunRow item = new RunRow(items, row);
            rows.putIfAbsent(item.whole("item"), item);
        });
        for (Item item : expected.subList(first - 1, expected.size())) {
            RunRow row = rows.remove(item.number());
            if (row != null) {
                compare(item, row);
            } else if (!toldLines.contains(Integer.toString(item.row().line()))) {
                problems.error(
                        Place.of(items.file()),
                        "item " + item.number() + " is missing, which " + order.place(item.row()) + " asks for",
                        REMEDY);
            }
        }
        rows.forEach((number, row) -> problems.error(
                Place.of(items.file(), row.row().line()), "the order asks for no item " + number, REMEDY));
    }

    private void compare(Item item, RunRow row) {
        List<String> cells = row.row().cells();
        List<String> values = cells.subList(cells.size() - order.headers().size(), cells.size());
        if (item.row().line() != row.whole("row")
                || item.copy() != row.whole("copy")
                || !item.row().cells().equals(values)) {
            problems.error(
                    Place.of(items.file(), row.row().line()),
                    "item " + item.number() + " is not what " + order.place(item.row()) + " asks for",
                    REMEDY);
        }
    }
}
