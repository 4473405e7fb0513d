package dev.quoin.job;

import dev.quoin.shop.Recipe;
import dev.quoin.shop.RecipeRows;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Adds rows to a table of recipes in its own columns, its own separator and its own line ends; what stands in it stays. */
final class RecipeAppender {
    private RecipeAppender() {}

    static byte[] append(byte[] table, Recipe recipe) {
        String text = new String(table, StandardCharsets.UTF_8);
        String header = text.lines().findFirst().orElse("");
        String separator = Stream.of(",", ";", "\t")
                .max(Comparator.comparingInt(one -> header.split(one, -1).length))
                .orElseThrow();
        List<String> columns = Arrays.stream(header.replace("\uFEFF", "").split(separator, -1))
                .map(cell -> cell.strip().replace("\"", ""))
                .toList();
        String end = text.contains("\r\n") ? "\r\n" : "\n";
        StringBuilder added = new StringBuilder(text.endsWith("\n") ? "" : end);
        for (Map<String, String> row : RecipeRows.of(recipe)) {
            added.append(columns.stream()
                            .map(column -> quoted(row.getOrDefault(column, ""), separator))
                            .collect(Collectors.joining(separator)))
                    .append(end);
        }
        byte[] more = added.toString().getBytes(StandardCharsets.UTF_8);
        byte[] all = Arrays.copyOf(table, table.length + more.length);
        System.arraycopy(more, 0, all, table.length, more.length);
        return all;
    }

    private static String quoted(String cell, String separator) {
        boolean plain = Stream.of(separator, "\"", "\n", "\r").noneMatch(cell::contains);
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
