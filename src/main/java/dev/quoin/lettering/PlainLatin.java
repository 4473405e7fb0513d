package dev.quoin.lettering;

/** The characters that a font may set one after the other: ASCII, Latin letters up to U+024F, and the apostrophe of print. */
final class PlainLatin {
    private static final char FIRST = ' ';
    private static final char LAST_LETTER = 0x24F;
    private static final char APOSTROPHE = 0x2019;
    private static final int APOSTROPHE_INDEX = LAST_LETTER - FIRST + 1;

    /** How many indices there are. */
    static final int COUNT = APOSTROPHE_INDEX + 1;

    private PlainLatin() {}

    /** A number from 0 to {@link #COUNT} - 1 for a plain character; -1 for others. */
    static int index(char c) {
        boolean plain = (c >= ' ' && c <= '~') || (c >= 0xC0 && c <= LAST_LETTER && Character.isLetter(c));
        if (plain) {
            return c - FIRST;
        }
        return c == APOSTROPHE ? APOSTROPHE_INDEX : -1;
    }

    /** The character of an index; not all are plain. */
    static char character(int index) {
        return index == APOSTROPHE_INDEX ? APOSTROPHE : (char) (FIRST + index);
    }

    /** Whether it belongs to the Latin script rather than to all. */
    static boolean isLetter(char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= 0xC0 && c <= LAST_LETTER);
    }
}
