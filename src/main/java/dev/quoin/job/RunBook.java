package dev.quoin.job;

import dev.quoin.plate.Stand;
import dev.quoin.store.Run;
import dev.quoin.table.Table;
import dev.quoin.table.TableRow;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** The items and the plates of a run, of all its sections, by their numbers. */
record RunBook(SortedMap<Integer, RunItem> items, SortedMap<Integer, RunPlate> plates) {
    /**
     * Reads them.
     *
     * @throws IOException if a table is missing or was changed
     */
    static RunBook of(Run run) throws IOException {
        SortedMap<Integer, RunItem> items = new TreeMap<>();
        SortedMap<Integer, List<List<String>>> lines = new TreeMap<>();
        SortedMap<Integer, RunPlate> plates = new TreeMap<>();
        for (int section = 1; section <= run.sections(); section++) {
            Table table = run.table(Run.numbered("items.csv", section));
            for (TableRow row : table.rows()) {
                RunItem item = RunItem.of(table, row, section);
                items.merge(item.number(), item, RunItem::and);
            }
            lines.clear();
            for (TableRow row : run.table(Run.numbered("plates.csv", section)).rows()) {
                lines.computeIfAbsent(Integer.valueOf(PlatesCsv.cell(row.cells(), "plate")), plate -> new ArrayList<>())
                        .add(row.cells());
            }
            int of = section;
            Map<Integer, Map<Integer, Stand>> stands = PartsCsv.stands(run, section);
            lines.forEach((plate, rows) ->
                    plates.put(plate, RunPlate.of(rows, of, stands.getOrDefault(plate, Map.of()))));
        }
        return new RunBook(items, plates);
    }

    /** The items of a plate, by number. */
    List<RunItem> itemsOf(int plate) {
        return items.values().stream().filter(item -> item.plate() == plate).toList();
    }
}
