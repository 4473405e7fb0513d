package dev.quoin.table;

import java.util.List;

/**
 * A record of a table.
 *
 * @param line the line of the file on which it starts, from 1
 * @param cells as they stand in the file, outer blanks and all; as many as the table has headers
 */
public record TableRow(int line, List<String> cells) {
    public TableRow {
        cells = List.copyOf(cells);
    }
}
