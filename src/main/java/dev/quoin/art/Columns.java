package dev.quoin.art;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The names by which templates reach the columns of an order. */
public final class Columns {
    private final List<String> order;
    private final Map<String, Integer> headers;
    private final Map<String, Integer> variables;

    /**
     * Takes the columns in order.
     *
     * @param headers as they stand in the file
     * @param variables their names in templates, in the same order
     */
    public Columns(List<String> headers, List<String> variables) {
        this.order = List.copyOf(headers);
        this.headers = index(headers);
        this.variables = index(variables);
    }

    RowModel model(List<String> cells) {
        return new RowModel(variables, headers, cells);
    }

    TrialModel trial() {
        return new TrialModel(variables.keySet(), headers.keySet());
    }

    /** The columns, from 0, of these variables or headers. */
    List<Integer> indexes(Collection<String> names) {
        return names.stream()
                .map(name -> variables.getOrDefault(name, headers.get(name)))
                .distinct()
                .toList();
    }

    /** A column's header. */
    String header(int column) {
        return order.get(column);
    }

    /** What templates may ask for, in the order of the columns. */
    List<String> names() {
        return variables.entrySet().stream()
                .sorted(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .toList();
    }

    private static Map<String, Integer> index(List<String> names) {
        Map<String, Integer> index = new HashMap<>();
        for (int i = 0; i < names.size(); i++) {
            index.put(names.get(i), i);
        }
        return index;
    }
}
