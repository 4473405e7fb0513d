package dev.quoin.problem;

import java.util.Locale;

/**
 * A value as a message shows it: in quotes, on one line, no longer than it takes to recognise it, and with hidden
 * characters as their numbers, since they could garble the message too.
 */
public final class Quoted {
    private static final int MOST_LETTERS = 80;

    private Quoted() {}

    public static String of(String value) {
        String line = value.replaceAll("[\\r\\n\\t]+", " ");
        if (line.codePointCount(0, line.length()) <= MOST_LETTERS) {
            return "'" + shown(line) + "'";
        }
        return "'" + shown(line.substring(0, line.offsetByCodePoints(0, MOST_LETTERS))) + "...'";
    }

    /**
     * Whether a character shows nothing itself, and can garble what stands around it: a control other than white space, one
     * that turns the direction of letters, a line separator, a soft hyphen, or one without width that joins no letters.
     */
    public static boolean isHidden(char c) {
        if (c < 0x7F) {
            return c < ' ' && c != '\t' && c != '\n' && c != '\r';
        }
        return c <= 0x9F
                || c == '\u00AD'
                || c == '\u200B'
                || c == '\u2060'
                || c == '\uFEFF'
                || (c >= '\u2028' && c <= '\u202E')
                || (c >= '\u2066' && c <= '\u2069');
    }

    /** A character by its number: {@code U+202E}. */
    public static String number(int c) {
        return String.format(Locale.ROOT, "U+%04X", c);
    }

    private static String shown(String line) {
        if (line.chars().noneMatch(c -> isHidden((char) c))) {
            return line;
        }
        StringBuilder shown = new StringBuilder();
        for (char c : line.toCharArray()) {
            shown.append(isHidden(c) ? "<" + number(c) + ">" : c);
        }
        return shown.toString();
    }
}
