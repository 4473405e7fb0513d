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
    private static final int ITEM = ItemsCsv.COLUMNS.indexOf("item");
    private static final int ROW = ItemsCsv.COLUMNS.indexOf("row");
    private static final int PLATE = ItemsCsv.COLUMNS.indexOf("plate");
    private static final int PART = ItemsCsv.COLUMNS.indexOf("part");
    private static final int SLOT = ItemsCsv.COLUMNS.indexOf("slot");

    /** The item of a row. */
    static RunItem of(Table table, TableRow row, int section) {
        List<String> cells = row.cells();
        SortedSet<Integer> parts = new TreeSet<>();
        parts.add(Integer.valueOf(cells.get(PART)));
        return new RunItem(
                Integer.parseInt(cells.get(ITEM)),
                section,
                Integer.parseInt(cells.get(ROW)),
                Integer.parseInt(cells.get(PLATE)),
                parts,
                cells.get(SLOT),
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
}
