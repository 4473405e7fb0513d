package dev.quoin.table;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.QuoteMode;

/** One reading of one file. */
final class TableParser {
    private static final int MOST_QUOTE_FAULTS = 20;

    private final String name;
    private final byte[] content;
    private final TextEncoding encoding;
    private final char separator;
    private final int firstLine;
    private final CSVFormat format;
    private final Problems problems;
    private final CellCheck check;

    private List<String> headers = List.of();
    /** How many columns without a name follow the last one that has one. */
    private int spare;

    private int headerLine;
    private CellStore cells = new CellStore(0, 0);
    private int quoteFaults;
    private boolean whole = true;

    TableParser(String name, byte[] content, Optional<Character> separator, Problems problems) {
        this.name = name;
        this.content = content;
        this.encoding = TextEncoding.of(content);
        Optional<Character> said = look(SeparatorLine::find);
        this.firstLine = said.isPresent() ? 2 : 1;
        this.separator = separator.or(() -> said).orElseGet(() -> look(Separator::find));
        // This quote mode makes an empty cell null unless it is quoted, which tells "" from a blank line.
        this.format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(this.separator)
                .setQuoteMode(QuoteMode.ALL_NON_NULL)
                .get();
        this.problems = problems;
        this.check = new CellCheck(name, encoding, problems);
    }

    Optional<Table> parse() {
        try {
            int line = firstLine;
            while (line > 0) {
                line = parseFrom(line);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (headers.isEmpty() && quoteFaults == 0) {
            problems.error(Place.of(name), "empty", "its first line must name the columns");
        }
        return headers.isEmpty() || !whole
                ? Optional.empty()
                : Optional.of(new Table(name, headers, headerLine, cells));
    }

    /** Reads rows from this line on; gives the line from which to go on after broken quotes, or 0 at the end. */
    private int parseFrom(int start) throws IOException {
        try (CSVParser parser =
                CSVParser.builder().setReader(readerAt(start)).setFormat(format).get()) {
            int line = start;
            try {
                for (CSVRecord next : parser) {
                    if (!see(next, line)) {
                        return 0;
                    }
                    line = start + (int) parser.getCurrentLineNumber();
                }
                return 0;
            } catch (UncheckedIOException e) {
                reportQuotes(line);
                quoteFaults++;
                return headers.isEmpty() || quoteFaults == MOST_QUOTE_FAULTS ? 0 : line + 1;
            }
        }
    }

    /** Takes a row in; false where there are too many. */
    private boolean see(CSVRecord next, int line) {
        if (next.size() == 1 && next.get(0) == null) {
            return true;
        }
        List<String> row = new ArrayList<>(next.size());
        for (int i = 0; i < next.size(); i++) {
            String cell = next.get(i);
            row.add(cell == null ? "" : cell);
        }
        check.check(row, headers, line);
        if (headers.isEmpty()) {
            takeHeaders(row, line);
            return true;
        }
        if (cells.rows() == TableReader.MOST_ROWS) {
            problems.error(Place.of(name, line), "more than " + TableReader.MOST_ROWS + " rows", "split the file");
            whole = false;
            return false;
        }
        cells.add(line, fit(row, line));
        return !problems.tooMany();
    }

    private void takeHeaders(List<String> row, int line) {
        int named = withoutEmptyEnd(row);
        headers = named == 0 ? row : row.subList(0, named);
        spare = row.size() - headers.size();
        headerLine = line;
        cells = new CellStore(headers.size(), content.length);
        Map<String, Integer> seen = new LinkedHashMap<>();
        for (int i = 0; i < headers.size(); i++) {
            Place place = new Place(name, line, i + 1);
            String header = row.get(i).strip();
            Integer first = seen.putIfAbsent(header, i + 1);
            if (header.isEmpty()) {
                refuseNameless(i);
            } else if (first != null) {
                problems.error(
                        place,
                        "columns " + first + " and " + (i + 1) + " are both named '" + CellCheck.plain(header) + "'",
                        "rename one");
                whole = false;
            }
        }
    }

    private void refuseNameless(int column) {
        problems.error(
                new Place(name, headerLine, column + 1),
                "column " + (column + 1) + " has no name",
                "name it, or delete it");
        whole = false;
    }

    /** How many cells there are without the empty ones at the end. */
    private static int withoutEmptyEnd(List<String> row) {
        int size = row.size();
        while (size > 0 && row.get(size - 1).isBlank()) {
            size--;
        }
        return size;
    }

    /** The cells of the named columns. Spreadsheets write empty columns behind them, where something once stood. */
    private List<String> fit(List<String> row, int line) {
        int wanted = headers.size();
        if (row.size() == wanted) {
            return row;
        }
        int filled = withoutEmptyEnd(row);
        if (spare > 0 && row.size() > wanted && row.size() <= wanted + spare) {
            if (filled > wanted) {
                refuseNameless(filled - 1);
                spare = 0;
            }
            return row.subList(0, wanted);
        }
        problems.error(
                Place.of(name, line),
                "%s where the header row has %d".formatted(count(row.size(), "cell"), wanted),
                row.size() < wanted
                        ? "add what is missing"
                        : "put quotes around a cell that holds a " + nameOf(separator)
                                + ", or delete what is too much");
        List<String> fitted = new ArrayList<>(row.subList(0, Math.min(row.size(), wanted)));
        while (fitted.size() < wanted) {
            fitted.add("");
        }
        return fitted;
    }

    private void reportQuotes(int line) throws IOException {
        whole = false;
        QuoteFault fault = QuoteFault.find(readerAt(line), separator);
        Place place = new Place(name, line, fault.column());
        if (fault.lines() == 0) {
            problems.error(place, "a quote that never closes", "close it, or double it if it belongs to the text");
        } else if (fault.lines() == 1) {
            problems.error(
                    place,
                    "text after a closing quote",
                    "double each quote that belongs to the text, or delete the rest");
        } else {
            problems.error(
                    place,
                    "a quote that closes only on line " + (line + fault.lines() - 1) + ", with text after it",
                    "close it on its own line, or double each quote that belongs to the text");
        }
    }

    /** Looks at the text from its start. */
    private <T> T look(Look<T> at) {
        try (Reader reader = new BufferedReader(encoding.reader(content))) {
            return at.see(reader);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The text from the start of a line, from 1; CR, LF and CRLF end one. */
    private Reader readerAt(int line) throws IOException {
        Reader reader = new BufferedReader(encoding.reader(content));
        int current = 1;
        boolean afterCr = false;
        while (current < line) {
            int c = reader.read();
            current += c == '\r' || (c == '\n' && !afterCr) ? 1 : 0;
            afterCr = c == '\r';
        }
        if (afterCr) {
            reader.mark(1);
            if (reader.read() != '\n') {
                reader.reset();
            }
        }
        return reader;
    }

    private interface Look<T> {
        T see(Reader text) throws IOException;
    }

    private static String nameOf(char separator) {
        return separator == ','
                ? "comma"
                : separator == ';' ? "semicolon" : separator == '\t' ? "tab" : "'" + separator + "'";
    }

    private static String count(int number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }
}
