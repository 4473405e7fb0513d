package dev.quoin.table;

import dev.quoin.problem.Place;
import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;

/** A CSV file as rows with places. Rows are made when asked for, so that a million of them need little memory. */
public final class Table {
    private final String file;
    private final List<String> headers;
    private final int headerLine;
    private final List<TableRow> rows;

    Table(String file, List<String> headers, int headerLine, CellStore cells) {
        this(file, headers, headerLine, new Rows(cells));
    }

    private Table(String file, List<String> headers, int headerLine, List<TableRow> rows) {
        this.file = file;
        this.headers = List.copyOf(headers);
        this.headerLine = headerLine;
        this.rows = rows;
    }

    /** A table of the same columns with other rows, each with as many cells. */
    public Table withRows(List<TableRow> newRows) {
        return new Table(file, headers, headerLine, List.copyOf(newRows));
    }

    /** The file's name, as the user knows it. */
    public String file() {
        return file;
    }

    /** The column names as they stand in the file: none empty, no two the same. */
    public List<String> headers() {
        return headers;
    }

    /** The line on which the headers start, from 1. */
    public int headerLine() {
        return headerLine;
    }

    /** All rows in the file's order; random access. */
    public List<TableRow> rows() {
        return rows;
    }

    /** Where a cell stands. */
    public Place place(TableRow row, int columnIndex0) {
        return new Place(file, row.line(), columnIndex0 + 1);
    }

    /** Where a header stands. */
    public Place headerPlace(int columnIndex0) {
        return new Place(file, headerLine, columnIndex0 + 1);
    }

    private static final class Rows extends AbstractList<TableRow> implements RandomAccess {
        private final CellStore cells;

        Rows(CellStore cells) {
            this.cells = cells;
        }

        @Override
        public TableRow get(int index) {
            return new TableRow(cells.line(index), cells.row(index));
        }

        @Override
        public int size() {
            return cells.rows();
        }
    }
}
