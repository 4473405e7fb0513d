package dev.quoin.problem;

/**
 * Where a problem stands.
 *
 * @param file the name of the file as the user knows it, or what takes its place ("command line")
 * @param line the line, from 1; 0 where no line is meant. In a table: the line on which the row starts
 * @param column the column, from 1; 0 where none is meant. In a table: the number of the cell in its row
 */
public record Place(String file, int line, int column) implements Comparable<Place> {
    public Place {
        if (line < 0 || column < 0) {
            throw new IllegalArgumentException("line " + line + ", column " + column);
        }
    }

    /** A file as a whole. */
    public static Place of(String file) {
        return new Place(file, 0, 0);
    }

    /** A line of a file. */
    public static Place of(String file, int line) {
        return new Place(file, line, 0);
    }

    /** The same line, at a column. */
    public Place at(int newColumn) {
        return new Place(file, line, newColumn);
    }

    @Override
    public int compareTo(Place other) {
        if (!file.equals(other.file)) {
            return file.compareTo(other.file);
        }
        return line == other.line ? Integer.compare(column, other.column) : Integer.compare(line, other.line);
    }

    /** {@code file:line:column}, without what is unknown. */
    @Override
    public String toString() {
        if (line == 0) {
            return file;
        }
        return column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
    }
}
