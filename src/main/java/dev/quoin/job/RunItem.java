package dev.quoin.job;

import dev.quoin.geometry.Point;
import dev.quoin.table.Table;
import dev.quoin.table.TableRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * An item as {@code items.csv} of a run has it.
 *
 * @param line of the order's file on which its row starts
 * @param centre in the field, mm
 * @param rotation in the field, degrees anticlockwise
 * @param values the cells of the order's columns, without those that are empty
 */
record RunItem(
        int number,
        int line,
        int plate,
        String slot,
        Point centre,
        double rotation,
        String recipe,
        List<String> values) {
    /** These items of a run, by number; those that it does not have are missing. */
    static SortedMap<Integer, RunItem> read(Table items, Set<Integer> wanted) {
        SortedMap<Integer, RunItem> found = new TreeMap<>();
        for (TableRow row : items.rows()) {
            int number = Integer.parseInt(row.cells().get(0));
            if (wanted.contains(number)) {
                found.put(number, of(number, row.cells()));
            }
        }
        return found;
    }

    private static RunItem of(int number, List<String> cells) {
        List<String> values = new ArrayList<>(cells.subList(ItemsCsv.COLUMNS.size(), cells.size()));
        values.removeIf(String::isBlank);
        return new RunItem(
                number,
                Integer.parseInt(cell(cells, "row")),
                Integer.parseInt(cell(cells, "plate")),
                cell(cells, "slot"),
                new Point(Double.parseDouble(cell(cells, "x_mm")), Double.parseDouble(cell(cells, "y_mm"))),
                Double.parseDouble(cell(cells, "rotation_deg")),
                cell(cells, "recipe"),
                values);
    }

    private static String cell(List<String> cells, String column) {
        return cells.get(ItemsCsv.COLUMNS.indexOf(column));
    }
}
