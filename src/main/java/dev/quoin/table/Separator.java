package dev.quoin.table;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds which character separates the cells, by looking outside quotes at the first rows: the one that stands in the
 * header row and as often in most rows after it; then the more frequent one; then comma, semicolon, tab.
 */
final class Separator {
    private static final String CANDIDATES = ",;\t";
    private static final int ROWS = 50;
    private static final int CHARACTERS = 1 << 16;

    private final List<int[]> counts = new ArrayList<>();
    private int[] row = new int[CANDIDATES.length()];
    private boolean quoted;
    private boolean blank = true;

    private Separator() {}

    static char find(Reader text) throws IOException {
        Separator separator = new Separator();
        int before = '\n';
        int read = 0;
        for (int c = text.read(); c >= 0 && read < CHARACTERS && separator.counts.size() < ROWS; c = text.read()) {
            separator.see((char) c, before);
            before = c;
            read++;
        }
        separator.endRow();
        return separator.best();
    }

    private void see(char c, int before) {
        int candidate = CANDIDATES.indexOf(c);
        if (c == '"') {
            boolean atCellStart = before == '\n' || before == '\r' || CANDIDATES.indexOf(before) >= 0;
            quoted = !quoted && (atCellStart || before == '"');
            blank = false;
        } else if (!quoted && (c == '\n' || c == '\r')) {
            endRow();
        } else {
            blank = false;
            if (!quoted && candidate >= 0) {
                row[candidate]++;
            }
        }
    }

    private void endRow() {
        if (!blank) {
            counts.add(row);
            row = new int[CANDIDATES.length()];
            blank = true;
        }
    }

    private char best() {
        int best = 0;
        long bestScore = 0;
        for (int i = 0; i < CANDIDATES.length() && !counts.isEmpty(); i++) {
            int column = i;
            int inHeader = counts.get(0)[column];
            long alike = counts.stream().filter(row -> row[column] == inHeader).count();
            long score = inHeader == 0 ? 0 : alike * CHARACTERS + inHeader;
            if (score > bestScore) {
                best = i;
                bestScore = score;
            }
        }
        return CANDIDATES.charAt(best);
    }
}
