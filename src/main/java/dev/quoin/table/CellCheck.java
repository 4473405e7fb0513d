package dev.quoin.table;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.util.Locale;

/** Finds what no cell of a table may hold: lost characters, NUL and other control characters, endless text. */
final class CellCheck {
    static final int LONGEST = 100_000;

    private final TextEncoding encoding;
    private final Problems problems;
    private boolean assumptionTold;

    CellCheck(TextEncoding encoding, Problems problems) {
        this.encoding = encoding;
        this.problems = problems;
    }

    /**
     * Reports the first thing wrong with the cell, if any.
     *
     * @param header how messages begin
     */
    void check(String cell, String header, Place place) {
        if (cell.length() > LONGEST) {
            problems.error(
                    place,
                    header + "a cell of " + cell.length() + " characters, more than " + LONGEST + " are not read",
                    "shorten it, or look for a quote that is not closed");
            return;
        }
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            if (c == '\uFFFD') {
                lost(cell, header, place);
                return;
            }
            if (Character.isISOControl(c) && c != '\t' && c != '\n' && c != '\r') {
                problems.error(place, header + named(c) + " in " + seen(cell), "retype the cell without it");
                return;
            }
            if (c >= 0x80 && encoding.assumed() && !assumptionTold) {
                assumptionTold = true;
                problems.warning(
                        place,
                        header + "the file is not UTF-8 and was read as Windows-1252, which gives " + seen(cell),
                        "check the accented letters, and save the file as UTF-8 if they are wrong");
            }
        }
    }

    private void lost(String cell, String header, Place place) {
        if (encoding.sound()) {
            problems.warning(
                    place,
                    header + "a character was lost before the file was saved (U+FFFD), in " + seen(cell),
                    "retype the cell");
        } else {
            problems.error(
                    place,
                    header + "bytes that are no text in " + encoding.charset() + ", in " + seen(cell),
                    "save the file again as UTF-8 text, or retype the cell");
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
        return text.replaceAll("\\p{Cc}", "\uFFFD");
    }
}
