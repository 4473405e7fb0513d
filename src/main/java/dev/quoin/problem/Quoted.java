package dev.quoin.problem;

/** A value as a message shows it: in quotes, on one line, and no longer than it takes to recognise it. */
public final class Quoted {
    private static final int MOST_LETTERS = 80;

    private Quoted() {}

    public static String of(String value) {
        String line = value.replaceAll("[\\r\\n\\t]+", " ");
        if (line.codePointCount(0, line.length()) <= MOST_LETTERS) {
            return "'" + line + "'";
        }
        return "'" + line.substring(0, line.offsetByCodePoints(0, MOST_LETTERS)) + "...'";
    }
}
