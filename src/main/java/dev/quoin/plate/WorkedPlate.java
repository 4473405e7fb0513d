package dev.quoin.plate;

import dev.quoin.toolpath.Tally;
import java.util.List;

/**
 * A plate with all that is worked out for it; nothing of it depends on other plates.
 *
 * @param plate with the parts that are marked
 * @param parts of the plate, at least one
 */
public record WorkedPlate(Plate plate, List<WorkedPart> parts) {
    public WorkedPlate {
        parts = List.copyOf(parts);
    }

    /** The beam's work on all parts. */
    public Tally tally() {
        return parts.stream().map(part -> part.time().tally()).reduce(Tally.ZERO, Tally::plus);
    }

    /** The operator's work on all parts, s. */
    public double handling() {
        return parts.stream().mapToDouble(part -> part.time().handling()).sum();
    }

    /** The beam's work and the handling, s. */
    public double total() {
        return tally().seconds() + handling();
    }

    /** What each step takes over all parts. */
    public List<StepTime> steps() {
        return StepTime.sums(parts.stream().map(part -> part.time().steps()).toList());
    }
}
