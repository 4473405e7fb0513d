package dev.quoin.order;

import dev.quoin.problem.Problems;
import dev.quoin.table.Table;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What templates call the columns of an order. */
public final class Variables {
    /** The name under which a template finds a cell by its exact header. */
    public static final String ROW = "row";

    private Variables() {}

    /**
     * The variable of a column: its name without outer blanks, lower-cased, each character other than a letter or digit
     * turned into {@code _}, and {@code _} before a leading digit.
     */
    public static String name(String header) {
        StringBuilder name = new StringBuilder();
        header.strip()
                .toLowerCase(Locale.ROOT)
                .codePoints()
                .map(c -> Character.isLetterOrDigit(c) ? c : '_')
                .forEach(name::appendCodePoint);
        if (!name.isEmpty() && Character.isDigit(name.codePointAt(0))) {
            name.insert(0, '_');
        }
        return name.toString();
    }

    static List<String> of(Table table, Problems problems) {
        List<String> names = new ArrayList<>();
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < table.headers().size(); i++) {
            String header = table.headers().get(i);
            String name = name(header);
            Integer first = seen.putIfAbsent(name, i);
            if (name.equals(ROW)) {
                problems.error(
                        table.headerPlace(i),
                        "a column called '" + header + "', which templates need for the whole row",
                        "rename it");
            } else if (first != null) {
                problems.error(
                        table.headerPlace(i),
                        "columns '" + table.headers().get(first) + "' and '" + header + "' would both be ${" + name
                                + "} in a template",
                        "rename one");
            }
            names.add(name);
        }
        return List.copyOf(names);
    }
}
