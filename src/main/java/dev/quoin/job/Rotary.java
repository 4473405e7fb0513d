package dev.quoin.job;

import dev.quoin.problem.Problems;
import dev.quoin.shop.Cylinder;
import java.util.List;
import java.util.Optional;

/**
 * Reads which round pieces a job marks.
 *
 * @param bottom diameter at the drawing's lower edge, mm
 * @param top diameter at its upper edge, mm
 */
record Rotary(double bottom, double top) {
    private static final double OVERLAP = 0.1;
    private static final double MOST_OVERLAP = 2;

    /** The pieces; none where the job names none, or they are not understood, which is a problem. */
    static Optional<Rotary> read(JobSettings settings, Problems problems) {
        Optional<String> text = settings.text(JobKey.ROTARY);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Optional<List<Double>> read = Numbers.read(text.get(), 1).or(() -> Numbers.read(text.get(), 2));
        Optional<Rotary> rotary = read.filter(all -> all.stream().allMatch(one -> one > 0))
                .map(all -> new Rotary(all.get(0), all.get(all.size() - 1)));
        if (rotary.isEmpty()) {
            problems.error(
                    settings.place(JobKey.ROTARY),
                    "rotary: '" + text.get() + "' is no diameter",
                    "write it in mm, such as 72, or 80,65 if the piece tapers");
        }
        for (JobKey other : List.of(
                JobKey.JIG, JobKey.JIG_COLUMN, JobKey.JIG_STEPS, JobKey.BACK_TEMPLATE, JobKey.BACK_TEMPLATE_COLUMN)) {
            if (settings.text(other).isPresent()) {
                problems.error(
                        settings.place(other),
                        other.option() + ": a round piece is turned instead, as --rotary says",
                        "leave one of the two out");
            }
        }
        return rotary;
    }

    /** The piece with a drawing of this height on it. */
    Cylinder piece(double height) {
        return new Cylinder(bottom, top, height);
    }

    /** By how much strips overlap where they must meet in ink, mm. */
    static double overlap(JobSettings settings, Problems problems) {
        Optional<String> text = settings.text(JobKey.BAND_OVERLAP);
        Optional<Double> overlap = text.flatMap(given -> Numbers.read(given, 1))
                .map(all -> all.get(0))
                .filter(one -> one >= 0 && one <= MOST_OVERLAP);
        if (text.isPresent() && overlap.isEmpty()) {
            problems.error(
                    settings.place(JobKey.BAND_OVERLAP),
                    "band-overlap: '" + text.get() + "' is no overlap",
                    "give mm from 0 to 2, such as 0.1");
        }
        if (text.isPresent() && settings.text(JobKey.ROTARY).isEmpty()) {
            problems.warning(
                    settings.place(JobKey.BAND_OVERLAP),
                    "band-overlap: no round piece is given",
                    "give --rotary too, or take --band-overlap out");
        }
        return overlap.orElse(OVERLAP);
    }
}
