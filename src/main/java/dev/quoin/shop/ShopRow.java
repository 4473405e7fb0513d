package dev.quoin.shop;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Suggestion;
import dev.quoin.table.Table;
import dev.quoin.table.TableRow;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** A row of a settings table; reads its cells by column name, reports what is wrong with them, and gives a stand-in. */
final class ShopRow {
    private static final Pattern NUMBER = Pattern.compile("[+-]?([0-9]{1,15}([.][0-9]{0,15})?|[.][0-9]{1,15})");

    private final Table table;
    private final TableRow row;
    private final Map<String, Integer> columns;
    private final Problems problems;

    ShopRow(Table table, TableRow row, Map<String, Integer> columns, Problems problems) {
        this.table = table;
        this.row = row;
        this.columns = columns;
        this.problems = problems;
    }

    int line() {
        return row.line();
    }

    /** Where the row stands. */
    Place place() {
        return Place.of(table.file(), row.line());
    }

    /** A cell without outer blanks; empty where its column is missing. */
    String text(String column) {
        Integer index = columns.get(column);
        return index == null ? "" : row.cells().get(index).strip();
    }

    /** A cell that must hold something. */
    String name(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            error(column, "empty", "write a name");
        }
        return text;
    }

    /** A cell that is empty or names something known; nothing is checked where its table could not be read. */
    String reference(String column, Optional<Set<String>> known) {
        String text = text(column);
        if (!text.isEmpty() && known.isPresent() && !known.get().contains(text)) {
            error(column, "no '" + text + "' is known", Suggestion.remedy(text, known.get()));
        }
        return text;
    }

    /** A number; 1 stands in for a wrong one. */
    double number(String column, Range range) {
        String text = text(column);
        if (text.isEmpty()) {
            error(column, "empty", "write " + range.describe());
            return 1;
        }
        return parse(column, text, range);
    }

    /** A number, or what an empty cell stands for. */
    double number(String column, Range range, double ifEmpty) {
        String text = text(column);
        return text.isEmpty() ? ifEmpty : parse(column, text, range);
    }

    /** A whole number from low to high. */
    int whole(String column, int low, int high) {
        String text = text(column);
        if (!text.matches("[0-9]{1,9}") || Integer.parseInt(text) < low || Integer.parseInt(text) > high) {
            error(
                    column,
                    text.isEmpty() ? "empty" : "'" + text + "' does not fit",
                    "write a whole number from " + low + " to " + high);
            return low;
        }
        return Integer.parseInt(text);
    }

    /** One of a closed choice, in lower case. */
    <E extends Enum<E>> E choice(String column, Class<E> choices) {
        String text = text(column);
        List<String> names = Arrays.stream(choices.getEnumConstants())
                .map(value -> value.name().toLowerCase(Locale.ROOT))
                .toList();
        int index = names.indexOf(text.toLowerCase(Locale.ROOT));
        if (index < 0) {
            error(
                    column,
                    text.isEmpty() ? "empty" : "'" + text + "' is not known",
                    "write " + String.join(" or ", names));
            index = 0;
        }
        return choices.getEnumConstants()[index];
    }

    /** One of a closed choice, or what an empty cell stands for. */
    <E extends Enum<E>> E choice(String column, E ifEmpty) {
        return text(column).isEmpty() ? ifEmpty : choice(column, ifEmpty.getDeclaringClass());
    }

    void error(String column, String message, String remedy) {
        problems.error(placeOf(column), column + ": " + message, remedy);
    }

    void warning(String column, String message, String remedy) {
        problems.warning(placeOf(column), column + ": " + message, remedy);
    }

    private Place placeOf(String column) {
        Integer index = columns.get(column);
        return index == null ? place() : table.place(row, index);
    }

    private double parse(String column, String text, Range range) {
        if (!NUMBER.matcher(text).matches()) {
            String remedy = text.matches("[+-]?[0-9]+,[0-9]+")
                    ? "write a point: " + text.replace(',', '.')
                    : "write " + range.describe();
            error(column, "'" + text + "' is no number", remedy);
            return 1;
        }
        double value = Double.parseDouble(text);
        if (!range.contains(value)) {
            error(column, text + " is out of range", "write " + range.describe());
            return 1;
        }
        return value + 0.0;
    }
}
