package dev.quoin.plate;

import dev.quoin.toolpath.Tally;
import java.util.List;

/**
 * What a plate, or a part of one, takes.
 *
 * @param steps in working order
 * @param itemSeconds for each item, in seat order: its strokes, the jumps inside it and the jumps into it, s
 * @param handling the operator's work, s
 */
public record PlateTime(List<StepTime> steps, List<Double> itemSeconds, double handling) {
    public PlateTime {
        steps = List.copyOf(steps);
        itemSeconds = List.copyOf(itemSeconds);
    }

    /** All steps together. */
    public Tally tally() {
        return steps.stream().map(StepTime::tally).reduce(Tally.ZERO, Tally::plus);
    }

    /** The beam's work and the handling, s. */
    public double total() {
        return tally().seconds() + handling;
    }
}
