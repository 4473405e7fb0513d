package dev.quoin.job;

import dev.quoin.order.Item;
import dev.quoin.order.Row;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.util.List;
import java.util.Optional;

/**
 * Reads of which row more pieces are made to fill a plate: the line of the order on which it starts, or {@code item} and
 * the number of one of its items.
 */
record SpareRow(LoadedJob job, Problems problems) {
    /** The row; none where none is asked for, or it is not understood, which is a problem. */
    Optional<Row> read() {
        Optional<String> text = job.settings().text(JobKey.FILL_SPARES);
        Optional<Row> row = text.flatMap(this::find);
        if (text.isPresent() && row.isEmpty()) {
            error(
                    "'" + text.get() + "' is neither the line of a row nor an item",
                    "write a line, such as 14, or an item, such as item 37");
        }
        return row;
    }

    private Optional<Row> find(String text) {
        String word = text.startsWith("item") ? text.substring("item".length()).strip() : text;
        if (!word.matches("\\d{1,9}")) {
            return Optional.empty();
        }
        int number = Integer.parseInt(word);
        if (text.startsWith("item")) {
            List<Item> items = job.items();
            return number >= 1 && number <= items.size()
                    ? Optional.of(items.get(number - 1).row())
                    : Optional.empty();
        }
        return job.order().rows().stream().filter(row -> row.line() == number).findFirst();
    }

    /** Tells that the row is on no plate. */
    void tellNotMade(Row row) {
        error("no piece of line " + row.line() + " is on a plate", "choose a row of which pieces are made");
    }

    private void error(String what, String remedy) {
        Place place = job.settings().place(JobKey.FILL_SPARES);
        problems.error(place, "fill-spares: " + what, remedy);
    }
}
