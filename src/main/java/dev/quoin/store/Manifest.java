package dev.quoin.store;

import dev.quoin.problem.Problems;
import dev.quoin.table.Table;
import dev.quoin.table.TableReader;
import dev.quoin.table.TableRow;
import dev.quoin.table.TableWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A list of files with what they held when they were written.
 *
 * @param file its own name, from the run folder
 * @param hashes SHA-256 in lower-case hexadecimal digits, by the files' names, with {@code /} between folders
 * @param asWritten whether its bytes are the ones that Quoin would write for this list
 */
public record Manifest(String file, SortedMap<String, String> hashes, boolean asWritten) {
    private static final List<String> HEADER = List.of("file", "sha256");

    /**
     * Reads one.
     *
     * @throws IOException if it cannot be read as a table of two columns
     */
    public static Manifest read(Path run, String file) throws IOException {
        byte[] bytes = Files.readAllBytes(run.resolve(file));
        Table table = table(file, bytes);
        if (table.headers().size() != HEADER.size()) {
            throw new DamagedFileException(file, "damaged: it must have two columns, file and sha256");
        }
        SortedMap<String, String> hashes = new TreeMap<>();
        for (TableRow row : table.rows()) {
            hashes.put(row.cells().get(0), row.cells().get(1));
        }
        boolean asWritten = text(hashes).equals(new String(bytes, StandardCharsets.UTF_8));
        return new Manifest(file, hashes, asWritten);
    }

    static String text(Map<String, String> hashes) throws IOException {
        StringBuilder text = new StringBuilder();
        TableWriter table = new TableWriter(text);
        table.row(HEADER);
        for (Map.Entry<String, String> entry : hashes.entrySet()) {
            table.row(List.of(entry.getKey(), entry.getValue()));
        }
        return text.toString();
    }

    /** A table of the run. */
    static Table table(String file, byte[] bytes) throws IOException {
        Problems problems = new Problems();
        return TableReader.read(file, bytes, Optional.of(','), problems)
                .filter(table -> !problems.hasErrors())
                .orElseThrow(() -> new DamagedFileException(
                        file, "damaged: " + problems.sorted().get(0).message()));
    }
}
