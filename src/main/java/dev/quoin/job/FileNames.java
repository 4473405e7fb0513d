package dev.quoin.job;

import java.util.Locale;

/** Names of the run's numbered files: padded so that they sort. */
final class FileNames {
    /** Ends the name of the file that holds a plate's first item alone. */
    static final String FIRST_PIECE = "-first-piece";

    private FileNames() {}

    /** {@code plate-001}: three digits, more where the run has more plates. */
    static String plate(int number, int plates) {
        int digits = Math.max(3, Integer.toString(plates).length());
        return "plate-" + String.format(Locale.ROOT, "%0" + digits + "d", number);
    }
}
