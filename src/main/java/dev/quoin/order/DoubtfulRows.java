package dev.quoin.order;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.util.BitSet;
import java.util.List;

/**
 * Warns of what an order clerk would ask about before anything is marked: values that stand in for others, slips of the
 * keyboard and of spreadsheets, rows that stand twice. Nothing is ever changed. The rows are read twice and not kept.
 */
public final class DoubtfulRows {
    /** So many of a kind are told in a column, then only their number. */
    static final int MOST_OF_A_KIND = 20;

    private final Order order;
    private final Items items;

    public DoubtfulRows(Order order, Items items) {
        this.order = order;
        this.items = items;
    }

    /**
     * Warns of the rows that are to be made.
     *
     * @param columns those whose values are marked, from 0; others are nobody's doubt
     * @param joined those of which a line break was set as a space
     */
    public void tell(BitSet columns, BitSet joined, Problems problems) {
        List<Row> rows = new WantedRows(order.rows(), items);
        columns.stream().forEach(column -> kinds(column).forEach(kind -> tell(kind, column, rows, problems)));
        joined.stream().forEach(column -> tell(new LostLineBreaks(), column, rows, problems));
        tellEmpty(rows, problems);
        Telling telling = new Telling(problems);
        RepeatedRows.find(order, rows, (row, problem) -> telling.add(row, problem));
        telling.close(order.headerPlace(0), "more rows are the same as one before them");
    }

    /** A spreadsheet writes separators for rows that were emptied; where the template permits it, they would be made. */
    private void tellEmpty(List<Row> rows, Problems problems) {
        Telling telling = new Telling(problems);
        for (Row row : rows) {
            if (row.cells().stream().allMatch(String::isBlank)) {
                telling.add(
                        row,
                        Problem.warning(
                                order.place(row),
                                "a row without a value, which makes a piece all the same",
                                "delete the row, unless a piece without a text is meant"));
            }
        }
        telling.close(order.headerPlace(0), "more rows are without a value");
    }

    private List<ColumnDoubts> kinds(int column) {
        String header = order.headers().get(column);
        return List.of(
                new StandIns(header),
                new OddBlanks(),
                new HiddenCharacters(),
                new MixedScripts(),
                new UpperCase(),
                new DigitsInNames(header),
                new LostZeros());
    }

    private void tell(ColumnDoubts kind, int column, List<Row> rows, Problems problems) {
        String header = order.headers().get(column).strip();
        rows.stream()
                .map(row -> value(row, column))
                .filter(value -> !value.isEmpty())
                .forEach(kind::see);
        Telling telling = new Telling(problems);
        for (Row row : rows) {
            String value = value(row, column);
            if (!value.isEmpty()) {
                kind.judge(value)
                        .ifPresent(doubt -> telling.add(
                                row,
                                Problem.warning(
                                        order.place(row, column), header + ": " + doubt.message(), doubt.remedy())));
            }
        }
        telling.close(order.headerPlace(column), "more values of '" + header + "' are like those");
    }

    private static String value(Row row, int column) {
        return row.cells().get(column).strip();
    }

    /** Tells of so many, and counts the rest. */
    private final class Telling {
        private final Problems problems;
        private int count;

        Telling(Problems problems) {
            this.problems = problems;
        }

        void add(Row row, Problem problem) {
            if (++count <= MOST_OF_A_KIND) {
                problems.add(problem.inItem(items.ofRow(row).get(0).number()));
            }
        }

        void close(Place place, String what) {
            if (count > MOST_OF_A_KIND) {
                problems.warning(place, count - MOST_OF_A_KIND + " " + what, "look through the whole column");
            }
        }
    }
}
