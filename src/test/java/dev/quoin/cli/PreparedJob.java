package dev.quoin.cli;

import dev.quoin.problem.Problems;
import dev.quoin.table.Table;
import dev.quoin.table.TableReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A job in a folder of its own, prepared through the whole program. */
final class PreparedJob {
    private final Path folder;
    private final StringWriter said = new StringWriter();

    PreparedJob(Path folder) {
        this.folder = folder;
    }

    PreparedJob file(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
        return this;
    }

    /** Prepares {@code order.csv} with more options; returns the exit status. */
    int prepare(String... options) {
        List<String> command = new ArrayList<>(List.of("prepare", "order.csv", "--out", "run", "--quiet"));
        command.addAll(List.of(options));
        PrintWriter out = new PrintWriter(said, true);
        return new Quoin(out, out, folder, false).run(command.toArray(String[]::new));
    }

    /** All that was printed. */
    String said() {
        return said.toString();
    }

    Path run() {
        return folder.resolve("run");
    }

    /** A table of the run, each row by the names of its columns. */
    List<Map<String, String>> table(String name) throws IOException {
        Table table = TableReader.read(name, Files.readAllBytes(run().resolve(name)), Optional.of(','), new Problems())
                .orElseThrow();
        List<Map<String, String>> rows = new ArrayList<>();
        table.rows().forEach(row -> {
            Map<String, String> cells = new LinkedHashMap<>();
            for (int i = 0; i < table.headers().size(); i++) {
                cells.put(table.headers().get(i), row.cells().get(i));
            }
            rows.add(cells);
        });
        return rows;
    }

    /** A cell of a CSV file, quoted. */
    static String quoted(String cell) {
        return '"' + cell.replace("\"", "\"\"") + '"';
    }
}
