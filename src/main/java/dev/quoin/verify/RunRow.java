package dev.quoin.verify;

import dev.quoin.table.Table;
import dev.quoin.table.TableRow;

/** A row of one of the run's tables, by the names of its columns. */
record RunRow(Table table, TableRow row) {
    /**
     * A cell.
     *
     * @throws IllegalArgumentException if the table has no such column
     */
    String text(String column) {
        int index = table.headers().indexOf(column);
        if (index < 0) {
            throw new IllegalArgumentException(table.file() + " has no column " + column);
        }
        return row.cells().get(index);
    }

    int whole(String column) {
        return Integer.parseInt(text(column));
    }

    double number(String column) {
        return Double.parseDouble(text(column));
    }
}
