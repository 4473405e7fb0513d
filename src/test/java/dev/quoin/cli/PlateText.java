package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

/** The text of a plate file. */
final class PlateText {
    private PlateText() {}

    /** A group that holds no other, from its first to its last character. */
    static String group(String plate, String id) {
        int start = plate.indexOf("<g id=\"" + id + "\">");
        assertTrue(start >= 0, "no group " + id);
        return plate.substring(start, plate.indexOf("</g>", start) + 4);
    }
}
