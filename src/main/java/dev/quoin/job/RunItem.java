package dev.quoin.job;

import dev.quoin.table.Table;
import dev.quoin.table.TableRow;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * An item as {@code items.csv} of a run has it.
 *
 * @param section of the run that has it, from 1
 * @param parts the numbers of the parts of its plate in which it is marked
 * @param line of the order's file on which its row starts
 * @param cells of the order's columns, as they are
 */
record RunItem(
        int number, int section, int line, int plate, SortedSet<Integer> parts, String slot, List<String> cells) {
    /** The item of a row. */
    static RunItem of(Table table, TableRow row, int section) {
        List<String> cells = row.cells();
        return new RunItem(
                Integer.parseInt(cell(cells, "item")),
                section,
                Integer.parseInt(cell(cells, "row")),
                Integer.parseInt(cell(cells, "plate")),
                new TreeSet<>(List.of(Integer.valueOf(cell(cells, "part")))),
                cell(cells, "slot"),
                cells.subList(ItemsCsv.COLUMNS.size(), table.headers().size()));
    }

    /** The same item, marked in the parts of both. */
    RunItem and(RunItem other) {
        SortedSet<Integer> all = new TreeSet<>(parts);
        all.addAll(other.parts);
        return new RunItem(number, section, line, plate, all, slot, cells);
    }

    /** The cells that are not blank. */
    List<String> values() {
        return cells.stream().filter(value -> !value.isBlank()).toList();
    }

    private static String cell(List<String> cells, String column) {
        return cells.get(ItemsCsv.COLUMNS.indexOf(column));
    }
}
