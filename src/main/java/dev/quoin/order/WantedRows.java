package dev.quoin.order;

import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;

/** The rows of an order that ask for at least one piece. */
final class WantedRows extends AbstractList<Row> implements RandomAccess {
    private final List<Row> rows;
    private final int[] indexes;

    WantedRows(List<Row> rows, Items items) {
        this.rows = rows;
        this.indexes = java.util.stream.IntStream.range(0, rows.size())
                .filter(row -> !items.ofRow(row).isEmpty())
                .toArray();
    }

    @Override
    public Row get(int index) {
        return rows.get(indexes[index]);
    }

    @Override
    public int size() {
        return indexes.length;
    }
}
