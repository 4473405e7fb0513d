package dev.quoin.table;

import java.io.IOException;
import java.util.List;

/**
 * Writes CSV: commas, LF, quotes only where RFC 4180 asks for them (or where a row would else be a blank line). Values
 * go out unchanged. The encoding is the caller's, who opens and closes what is written to.
 */
public final class TableWriter {
    private final Appendable out;

    public TableWriter(Appendable out) {
        this.out = out;
    }

    /** Writes one record. */
    public void row(List<String> cells) throws IOException {
        if (cells.size() == 1 && cells.get(0).isEmpty()) {
            out.append("\"\"");
        }
        String between = "";
        for (String cell : cells) {
            out.append(between);
            cell(cell);
            between = ",";
        }
        out.append('\n');
    }

    private void cell(String cell) throws IOException {
        if (!needsQuotes(cell)) {
            out.append(cell);
            return;
        }
        out.append('"').append(cell.replace("\"", "\"\"")).append('"');
    }

    private static boolean needsQuotes(String cell) {
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            if (c == ',' || c == '"' || c == '\n' || c == '\r') {
                return true;
            }
        }
        return false;
    }
}
