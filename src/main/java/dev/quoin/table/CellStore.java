package dev.quoin.table;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** The cells of a table, packed: one array of UTF-8 bytes, where each cell ends in it, and the line of each row. */
final class CellStore {
    private final int columns;
    private byte[] bytes;
    private int[] ends = new int[256];
    private int[] lines = new int[64];
    private int cells;
    private int rows;

    /**
     * A store without rows.
     *
     * @param expectedBytes what all cells may need together, so that the array seldom grows
     */
    CellStore(int columns, int expectedBytes) {
        this.columns = columns;
        this.bytes = new byte[expectedBytes];
    }

    /** Appends a row; it must have as many cells as the store has columns. */
    void add(int line, List<String> row) {
        if (row.size() != columns) {
            throw new IllegalArgumentException(row.size() + " cells for " + columns + " columns");
        }
        for (String cell : row) {
            append(cell.getBytes(StandardCharsets.UTF_8));
        }
        if (rows == lines.length) {
            lines = Arrays.copyOf(lines, larger(rows));
        }
        lines[rows++] = line;
    }

    int rows() {
        return rows;
    }

    int line(int row) {
        return lines[Objects.checkIndex(row, rows)];
    }

    List<String> row(int row) {
        Objects.checkIndex(row, rows);
        String[] values = new String[columns];
        for (int i = 0; i < columns; i++) {
            int cell = row * columns + i;
            int start = cell == 0 ? 0 : ends[cell - 1];
            values[i] = new String(bytes, start, ends[cell] - start, StandardCharsets.UTF_8);
        }
        return List.of(values);
    }

    private void append(byte[] cell) {
        int start = cells == 0 ? 0 : ends[cells - 1];
        int end = Math.addExact(start, cell.length);
        if (end > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(end, larger(bytes.length)));
        }
        if (cells == ends.length) {
            ends = Arrays.copyOf(ends, larger(cells));
        }
        System.arraycopy(cell, 0, bytes, start, cell.length);
        ends[cells++] = end;
    }

    private static int larger(int size) {
        return (int) Math.min(Integer.MAX_VALUE - 16L, size + size / 2L + 16);
    }
}
