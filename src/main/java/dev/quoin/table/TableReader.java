package dev.quoin.table;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.util.Optional;

/**
 * Reads a CSV file (RFC 4180, with any line ending, separator and usual encoding) into a {@link Table}.
 *
 * <p>A row has the line on which it starts. Completely blank lines are skipped. Nothing of a cell is lost but blanks
 * between a closing quote and the separator after it. A row with too few or too many cells is an error and stays in the
 * table, filled up or cut, so that whoever leaves bad rows out keeps the numbers of the others. Where quotes are broken
 * nobody can say what the rows are: that is an error, reading goes on at the next line to find more, and no table is
 * given; nor is it where a header is missing, empty or named twice. Columns at the end that are empty from the header on are
 * passed over. A table of headers alone is a table.
 */
public final class TableReader {
    /** More rows are not read. */
    public static final int MOST_ROWS = 2_000_000;
    /** Longer files are not read, bytes; a third of what one array holds, since UTF-8 may need three bytes for one. */
    public static final int MOST_BYTES = 500_000_000;

    private TableReader() {}

    /**
     * Reads the whole file.
     *
     * @param name how problems name the file
     * @param separator between cells; if empty, what a first line {@code sep=;} says, or comma, semicolon or tab by looking
     */
    public static Optional<Table> read(String name, byte[] content, Optional<Character> separator, Problems problems) {
        Place file = Place.of(name);
        if (content.length > MOST_BYTES) {
            problems.error(file, "more than " + MOST_BYTES / 1_000_000 + " MB", "split the file");
            return Optional.empty();
        }
        if (content.length > 3 && content[0] == 'P' && content[1] == 'K' && content[2] == 3 && content[3] == 4) {
            problems.error(file, "a workbook or an archive, not a CSV file", "export the sheet as CSV (UTF-8)");
            return Optional.empty();
        }
        return new TableParser(name, content, separator, problems).parse();
    }
}
