package dev.quoin.job;

import dev.quoin.order.Item;
import dev.quoin.order.Row;
import dev.quoin.plate.Lot;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The items of rows, those that have one value of a column together; an item whose cell is empty is by itself. */
record Lots(LoadedJob job, int column) {
    /** The lots of rows, given by their indexes in working order. */
    List<Lot> of(List<Integer> rows) {
        Map<Object, List<Integer>> lots = new LinkedHashMap<>();
        for (int index : rows) {
            Row row = job.order().rows().get(index);
            String value = row.cells().get(column).strip();
            for (Item item : job.items().ofRow(row)) {
                Object key = value.isEmpty() ? item.number() : value;
                lots.computeIfAbsent(key, made -> new ArrayList<>()).add(item.number());
            }
        }
        return lots.values().stream().map(Lot::new).toList();
    }
}
