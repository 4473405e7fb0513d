package dev.quoin.table;

import java.io.IOException;
import java.io.Reader;

/**
 * What is wrong with the quotes of a row that the parser refused.
 *
 * @param column the cell, from 1
 * @param lines how many lines the quoted text spans; 0 where its quote never closes
 */
record QuoteFault(int column, int lines) {
    /** Looks for it, from the row's first character. */
    static QuoteFault find(Reader row, char separator) throws IOException {
        int column = 1;
        boolean atCellStart = true;
        for (int c = row.read(); c >= 0; c = row.read()) {
            if (atCellStart && c == '"') {
                Quoted quoted = Quoted.read(row);
                c = quoted.next();
                while (c >= 0 && c != separator && Character.isWhitespace(c) && c != '\n' && c != '\r') {
                    c = row.read();
                }
                boolean ended = c < 0 || c == separator || c == '\n' || c == '\r';
                if (!quoted.closed() || !ended) {
                    return new QuoteFault(column, quoted.closed() ? quoted.lines() : 0);
                }
            }
            atCellStart = c == separator;
            column += atCellStart ? 1 : 0;
        }
        return new QuoteFault(column, 0);
    }

    /** A quoted text after its opening quote: its lines, whether it closes, and the character after that (or -1). */
    private record Quoted(int lines, boolean closed, int next) {
        static Quoted read(Reader text) throws IOException {
            int lines = 1;
            int before = 0;
            for (int c = text.read(); c >= 0; c = text.read()) {
                if (c == '"') {
                    c = text.read();
                    if (c != '"') {
                        return new Quoted(lines, true, c);
                    }
                }
                lines += c == '\r' || (c == '\n' && before != '\r') ? 1 : 0;
                before = c;
            }
            return new Quoted(lines, false, -1);
        }
    }
}
