package dev.quoin.order;

import dev.quoin.problem.Problem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;

/**
 * Finds rows that stand twice in an order, whole. To hold little of a long order, one number a row is kept first; only rows
 * whose numbers are equal are compared.
 */
final class RepeatedRows {
    private RepeatedRows() {}

    /** Tells of each row that is the same as one before it. */
    static void find(Order order, List<Row> rows, BiConsumer<Row, Problem> found) {
        long[] hashes = rows.stream().mapToLong(row -> hash(row.cells())).toArray();
        long[] sorted = hashes.clone();
        Arrays.sort(sorted);
        Map<Long, List<Row>> before = new HashMap<>();
        for (int i = 0; i < hashes.length; i++) {
            if (repeats(sorted, hashes[i])) {
                Row row = rows.get(i);
                List<Row> alike = before.computeIfAbsent(hashes[i], made -> new ArrayList<>());
                alike.stream()
                        .filter(other -> other.cells().equals(row.cells()))
                        .findFirst()
                        .ifPresentOrElse(first -> found.accept(row, told(order, row, first)), () -> alike.add(row));
            }
        }
    }

    private static Problem told(Order order, Row row, Row first) {
        return Problem.warning(
                order.place(row),
                "the same row, in all its cells, as line " + first.line(),
                "leave both if two pieces are meant, or take one out");
    }

    private static boolean repeats(long[] sorted, long hash) {
        int at = Arrays.binarySearch(sorted, hash);
        return at > 0 && sorted[at - 1] == hash || at + 1 < sorted.length && sorted[at + 1] == hash;
    }

    /** A polynomial of the characters in 64 bits, so that few rows are compared for nothing. */
    private static long hash(List<String> cells) {
        long hash = 1;
        for (String cell : cells) {
            for (int i = 0; i < cell.length(); i++) {
                hash = hash * 0x9E3779B97F4A7C15L + cell.charAt(i) + 1;
            }
            hash = hash * 0x9E3779B97F4A7C15L;
        }
        return hash;
    }
}
