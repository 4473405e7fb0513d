package dev.quoin.job;

import dev.quoin.plate.Part;
import dev.quoin.plate.Plate;
import java.util.List;
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

    /** {@code plate-001}, or {@code plate-001-part-2} of a plate of several parts: as many digits as the last part has. */
    static String part(Plate plate, Part part, int plates) {
        String stem = plate(plate.number(), plates);
        List<Part> parts = plate.parts();
        if (parts.size() == 1) {
            return stem;
        }
        int digits = Integer.toString(parts.get(parts.size() - 1).number()).length();
        return stem + "-part-" + String.format(Locale.ROOT, "%0" + digits + "d", part.number());
    }
}
