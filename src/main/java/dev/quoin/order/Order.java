package dev.quoin.order;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.table.Table;
import dev.quoin.table.TableRow;
import java.util.AbstractList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.RandomAccess;

/** The customer's order: the rows of a table, with a variable name for each column. */
public final class Order {
    private final Table table;
    private final List<String> variables;

    private Order(Table table, List<String> variables) {
        this.table = table;
        this.variables = variables;
    }

    /**
     * Takes a table as an order. An order without rows is an error, and so are two columns of one variable name or one
     * called {@code row}.
     */
    public static Optional<Order> of(Table table, Problems problems) {
        int before = problems.errors();
        List<String> variables = Variables.of(table, problems);
        if (table.rows().isEmpty()) {
            problems.error(
                    Place.of(table.file(), table.headerLine()),
                    "an order without rows, only the names of its columns",
                    "add a row for each thing to mark");
        }
        return problems.errors() > before ? Optional.empty() : Optional.of(new Order(table, variables));
    }

    /** The name of its file, as problems give it. */
    public String file() {
        return table.file();
    }

    /** The column names as they stand in the file. */
    public List<String> headers() {
        return table.headers();
    }

    /** What templates call the columns, in the same order. */
    public List<String> variables() {
        return variables;
    }

    /** The index of a column, from 0, by its exact header, or else without outer blanks, or else as a variable. */
    public OptionalInt column(String headerOrVariable) {
        int exact = headers().indexOf(headerOrVariable);
        if (exact >= 0) {
            return OptionalInt.of(exact);
        }
        int stripped = headers().stream().map(String::strip).toList().indexOf(headerOrVariable.strip());
        int found = stripped >= 0 ? stripped : variables.indexOf(headerOrVariable);
        return found >= 0 ? OptionalInt.of(found) : OptionalInt.empty();
    }

    /** All rows, in the file's order; random access, each made when asked for. */
    public List<Row> rows() {
        return new Rows(table.rows());
    }

    /** Where a cell stands; the column from 0. */
    public Place place(Row row, int column) {
        return new Place(file(), row.line(), column + 1);
    }

    /** Where a row stands. */
    public Place place(Row row) {
        return Place.of(file(), row.line());
    }

    /** Where a header stands; the column from 0. */
    public Place headerPlace(int column) {
        return table.headerPlace(column);
    }

    private static final class Rows extends AbstractList<Row> implements RandomAccess {
        private final List<TableRow> rows;

        Rows(List<TableRow> rows) {
            this.rows = rows;
        }

        @Override
        public Row get(int index) {
            TableRow row = rows.get(index);
            return new Row(index, row.line(), row.cells());
        }

        @Override
        public int size() {
            return rows.size();
        }
    }
}
