package dev.quoin.job;

import java.util.Map;
import java.util.Optional;

/**
 * What a job comes to on one jig and through one lens.
 *
 * @param jig its name; several with commas between where the rows choose
 * @param field the side of the lens's field, mm
 * @param reached slots that can be filled, over all jigs; the fewest for any group
 * @param usable slots that could be if the lens reached them
 * @param plates 0 if it cannot be done
 * @param marking beam time, s
 * @param handling loading, plates and set-ups, s
 * @param spot diameter in focus, mm
 * @param fluence the fluence against that through the recipe's own lens, by recipe; none for one that names no lens
 * @param refusal why it cannot be done; empty if it can
 */
public record QuoteLine(
        String jig,
        String lens,
        double field,
        int reached,
        int usable,
        int plates,
        double marking,
        double handling,
        double spot,
        Map<String, Double> fluence,
        Optional<String> refusal) {
    /** All of it, s. */
    public double total() {
        return marking + handling;
    }

    boolean reachesAll() {
        return refusal.isEmpty() && reached == usable;
    }
}
