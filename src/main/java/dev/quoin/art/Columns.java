package dev.quoin.art;

import dev.quoin.order.Item;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** The names by which templates reach the columns of an order, and what is special about some. */
public final class Columns {
    private final List<String> order;
    private final Map<String, Integer> headers;
    private final Map<String, Integer> variables;
    private final Map<Integer, DateForm> dates;
    private final Optional<Serial> serial;

    /**
     * Takes the columns in order.
     *
     * @param headers as they stand in the file
     * @param variables their names in templates, in the same order
     * @param dates the columns, from 0, that hold dates
     * @param serial how items are numbered in series, if they are
     */
    public Columns(
            List<String> headers, List<String> variables, Map<Integer, DateForm> dates, Optional<Serial> serial) {
        this.order = List.copyOf(headers);
        this.headers = index(headers);
        this.variables = index(variables);
        this.dates = Map.copyOf(dates);
        this.serial = serial;
    }

    RowModel model(Item item, Map<Integer, LocalDate> datesOfRow) {
        return new RowModel(this, item, datesOfRow);
    }

    TrialModel trial() {
        return new TrialModel(this);
    }

    OptionalInt ofVariable(String name) {
        return column(variables.get(name));
    }

    OptionalInt ofHeader(String header) {
        return column(headers.get(header));
    }

    Map<Integer, DateForm> dates() {
        return dates;
    }

    Optional<Serial> serial() {
        return serial;
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

    private static OptionalInt column(Integer index) {
        return index == null ? OptionalInt.empty() : OptionalInt.of(index);
    }

    private static Map<String, Integer> index(List<String> names) {
        Map<String, Integer> index = new HashMap<>();
        for (int i = 0; i < names.size(); i++) {
            index.put(names.get(i), i);
        }
        return index;
    }
}
