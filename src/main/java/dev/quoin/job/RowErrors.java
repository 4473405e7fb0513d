package dev.quoin.job;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;

/** Tells errors of single rows, which can be left out, from those that stop the whole job. */
record RowErrors(LoadedJob job, Problems problems) {
    /** Whether the job cannot go on: for any error, or, where bad rows are skipped, for one that is not of a row. */
    boolean stopTheJob(boolean skipBadRows) {
        if (problems.tooMany()) {
            problems.error(
                    Place.of(job.order().file()),
                    "more than " + Problems.MOST + " errors; rows after them were not looked at",
                    "correct what they have in common, and try again");
            return true;
        }
        return problems.sorted().stream()
                .anyMatch(problem -> problem.isError() && !(skipBadRows && isOfARow(problem.place())));
    }

    private boolean isOfARow(Place place) {
        return place.file().equals(job.order().file())
                && place.line() > job.order().headerPlace(0).line();
    }
}
