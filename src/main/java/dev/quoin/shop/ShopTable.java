package dev.quoin.shop;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Suggestion;
import dev.quoin.table.Table;
import dev.quoin.table.TableReader;
import dev.quoin.table.TableRow;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** A settings table whose columns are known by name. */
final class ShopTable {
    private final Table table;
    private final Map<String, Integer> columns;
    private final Problems problems;

    private ShopTable(Table table, Map<String, Integer> columns, Problems problems) {
        this.table = table;
        this.columns = columns;
        this.problems = problems;
    }

    /** Opens a table; a required column that is missing is an error, one that is not known a warning. */
    static Optional<ShopTable> open(
            String file, byte[] content, List<String> required, List<String> optional, Problems problems) {
        Optional<Table> table = TableReader.read(file, content, Optional.empty(), problems);
        if (table.isEmpty()) {
            return Optional.empty();
        }
        List<String> known = new ArrayList<>(required);
        known.addAll(optional);
        Map<String, Integer> columns = new LinkedHashMap<>();
        for (int i = 0; i < table.get().headers().size(); i++) {
            String header = table.get().headers().get(i).strip();
            columns.put(header, i);
            if (!known.contains(header)) {
                problems.warning(
                        table.get().headerPlace(i),
                        "column '" + header + "' is not known and not read",
                        Suggestion.remedy(header, known));
            }
        }
        List<String> missing =
                required.stream().filter(name -> !columns.containsKey(name)).toList();
        for (String name : missing) {
            problems.error(Place.of(file, table.get().headerLine()), "no column '" + name + "'", "add it");
        }
        return missing.isEmpty() ? Optional.of(new ShopTable(table.get(), columns, problems)) : Optional.empty();
    }

    /** Its rows. */
    List<ShopRow> rows() {
        List<ShopRow> rows = new ArrayList<>();
        for (TableRow row : table.rows()) {
            rows.add(new ShopRow(table, row, columns, problems));
        }
        return rows;
    }

    /**
     * What each row makes, by the name in a column; a name that comes again is an error. Rows with errors stand too, so
     * that others may refer to them without another error.
     */
    <T> Map<String, T> named(String column, Function<ShopRow, T> make) {
        Map<String, T> made = new LinkedHashMap<>();
        Map<String, Integer> lines = new LinkedHashMap<>();
        for (ShopRow row : rows()) {
            String name = row.name(column);
            Integer first = lines.putIfAbsent(name, row.line());
            if (first != null && !name.isEmpty()) {
                row.error(column, "'" + name + "' stands on line " + first + " already", "rename one");
            }
            made.put(name, make.apply(row));
        }
        return Collections.unmodifiableMap(made);
    }

    /** Reports that it has no rows, where it must have some. */
    void mustHaveRows(String noun) {
        if (table.rows().isEmpty()) {
            problems.error(Place.of(table.file(), table.headerLine()), "no " + noun, "add a row for each");
        }
    }
}
