package dev.quoin.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Short ways to read a table in a test. */
final class Tables {
    static final String NAME = "order.csv";

    private Tables() {}

    /** Header row and rows; no problem may be found. */
    static List<List<String>> read(String text) {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    static List<List<String>> read(byte[] content) {
        Problems problems = new Problems();
        Table table = TableReader.read(NAME, content, Optional.empty(), problems)
                .orElseThrow(() -> new AssertionError(problems.sorted()));
        assertEquals(List.of(), problems.sorted());
        return rows(table);
    }

    static List<List<String>> rows(Table table) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(table.headers());
        table.rows().forEach(row -> rows.add(row.cells()));
        return rows;
    }

    /** What a user sees. */
    static List<String> problems(String text) {
        return problems(text.getBytes(StandardCharsets.UTF_8));
    }

    static List<String> problems(byte[] content) {
        Problems problems = new Problems();
        TableReader.read(NAME, content, Optional.empty(), problems);
        return problems.sorted().stream().map(Problem::toString).toList();
    }
}
