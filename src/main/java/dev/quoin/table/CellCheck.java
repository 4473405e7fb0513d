package dev.quoin.table;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.util.List;
import java.util.Locale;

/** Finds what no cell of a table may hold: lost characters, NUL and other control characters, endless text. */
final class CellCheck {
    static final int LONGEST = 100_000;
    /** What decoders put in place of bytes that are no character. */
    private static final char LOST = '\uFFFD';

    private final String file;
    private final TextEncoding encoding;
    private final Problems problems;
    private boolean assumptionTold;

    CellCheck(String file, TextEncoding encoding, Problems problems) {
        this.file = file;
        this.encoding = encoding;
        this.problems = problems;
    }

    /**
     * Reports the first thing wrong with each cell of a row, if any.
     *
     * @param headers of the columns; messages about a cell begin with its own
     */
    void check(List<String> row, List<String> headers, int line) {
        for (int i = 0; i < row.size(); i++) {
            String cell = row.get(i);
            int at = firstDoubt(cell);
            if (at < cell.length()) {
                String header = i < headers.size() ? plain(headers.get(i).strip()) + ": " : "";
                report(cell, at, new Place(file, line, i + 1), header);
            }
        }
    }

    /** Where the first character stands that needs a look; the cell's length if none does. */
    private int firstDoubt(String cell) {
        boolean lookFurther = encoding.assumed() && !assumptionTold;
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            boolean plain = c >= ' ' && c <= '~';
            if ((!plain && (isBad(c) || (lookFurther && c >= 0x80))) || i == LONGEST) {
                return i;
            }
        }
        return cell.length();
    }

    private static boolean isBad(char c) {
        return c == LOST || (Character.isISOControl(c) && c != '\t' && c != '\n' && c != '\r');
    }

    private void report(String cell, int at, Place place, String header) {
        char c = cell.charAt(at);
        if (at == LONGEST) {
            problems.error(
                    place,
                    header + "a cell of " + cell.length() + " characters, more than " + LONGEST,
                    "shorten it, or look for a quote that is not closed");
        } else if (c == LOST && encoding.sound()) {
            problems.warning(
                    place,
                    header + "a character was lost before the file was saved (U+FFFD), in " + seen(cell),
                    "retype the cell");
        } else if (c == LOST) {
            problems.error(
                    place,
                    header + "bytes that are no text in " + encoding.charset() + ", in " + seen(cell),
                    "save the file again as UTF-8 text, or retype the cell");
        } else if (isBad(c)) {
            problems.error(place, header + named(c) + " in " + seen(cell), "retype the cell without it");
        } else {
            assumptionTold = true;
            problems.warning(
                    place,
                    header + "the file is not UTF-8 and was read as Windows-1252, which gives " + seen(cell),
                    "check the accented letters, and save the file as UTF-8 if they are wrong");
            reportRest(cell, place, header);
        }
    }

    /** The cell that the assumption was told about may have something wrong as well. */
    private void reportRest(String cell, Place place, String header) {
        int at = firstDoubt(cell);
        if (at < cell.length()) {
            report(cell, at, place, header);
        }
    }

    private static String named(char c) {
        return (c == 0 ? "a NUL" : "the control character") + String.format(Locale.ROOT, " (U+%04X)", (int) c);
    }

    private static String seen(String cell) {
        String start =
                cell.substring(0, cell.offsetByCodePoints(0, Math.min(40, cell.codePointCount(0, cell.length()))));
        return "'" + plain(start) + (start.length() < cell.length() ? "..." : "") + "'";
    }

    /** The text as a message may show it: control characters could play tricks on a terminal. */
    static String plain(String text) {
        return text.replaceAll("[\\r\\n\\t]+", " ").replaceAll("\\p{Cc}", "\uFFFD");
    }
}
