package dev.quoin.job;

import dev.quoin.problem.Problems;
import java.util.Optional;

/** The share of the pieces that the user expects to fail. */
final class Spoilage {
    private static final double HIGHEST_PERCENT = 90;

    private Spoilage() {}

    /** The share, from 0; 0 where none is given. */
    static double rate(JobSettings settings, Problems problems) {
        Optional<String> text = settings.text(JobKey.SPOILAGE);
        if (text.isEmpty()) {
            return 0;
        }
        try {
            double percent = Double.parseDouble(text.get());
            if (percent >= 0 && percent <= HIGHEST_PERCENT) {
                return percent / 100;
            }
        } catch (NumberFormatException notANumber) {
            // Told below, like a number out of range.
        }
        problems.error(
                settings.place(JobKey.SPOILAGE),
                "spoilage: '" + text.get() + "' is no percentage of pieces that fail",
                "give a number from 0 to 90, such as 2.5");
        return 0;
    }
}
