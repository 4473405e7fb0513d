package dev.quoin.job;

import dev.quoin.table.Table;
import dev.quoin.table.TableRow;
import java.util.List;

/**
 * An item as {@code items.csv} of a run has it.
 *
 * @param section of the run that has it, from 1
 * @param line of the order's file on which its row starts
 * @param cells of the order's columns, as they are
 */
record RunItem(
        int number, int section, int line, int plate, String slot, String recipe, double seconds, List<String> cells) {
    /** The item of a row. */
    static RunItem of(Table table, TableRow row, int section) {
        List<String> cells = row.cells();
        return new RunItem(
                Integer.parseInt(cell(cells, "item")),
                section,
                Integer.parseInt(cell(cells, "row")),
                Integer.parseInt(cell(cells, "plate")),
                cell(cells, "slot"),
                cell(cells, "recipe"),
                Double.parseDouble(cell(cells, "seconds")),
                cells.subList(ItemsCsv.COLUMNS.size(), table.headers().size()));
    }

    /** The cells that are not blank. */
    List<String> values() {
        return cells.stream().filter(value -> !value.isBlank()).toList();
    }

    private static String cell(List<String> cells, String column) {
        return cells.get(ItemsCsv.COLUMNS.indexOf(column));
    }
}
