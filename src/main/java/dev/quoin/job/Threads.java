package dev.quoin.job;

import dev.quoin.problem.Problems;
import java.util.Optional;

/** On how many threads a job is worked: as many as it says, or as the machine has processors. */
final class Threads {
    /** More are a slip. */
    private static final int MOST = 256;

    private Threads() {}

    /** Tells of a number that is none. */
    static void check(JobSettings settings, Problems problems) {
        Optional<String> text = settings.text(JobKey.THREADS);
        if (text.isPresent() && !isNumber(text.get())) {
            problems.error(
                    settings.place(JobKey.THREADS),
                    "threads: '" + text.get() + "' is no whole number from 1 to " + MOST,
                    "give one, or leave it out");
        }
    }

    /**
     * How many to use.
     *
     * @param pieces into which the work falls; for one or two, other threads cost more than they give
     */
    static int of(JobSettings settings, int pieces) {
        int asked = settings.text(JobKey.THREADS)
                .filter(Threads::isNumber)
                .map(Integer::parseInt)
                .orElse(Runtime.getRuntime().availableProcessors());
        return pieces <= 2 ? 1 : Math.min(asked, pieces);
    }

    private static boolean isNumber(String text) {
        return text.matches("[0-9]{1,3}") && Integer.parseInt(text) >= 1 && Integer.parseInt(text) <= MOST;
    }
}
