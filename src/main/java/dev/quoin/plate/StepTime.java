package dev.quoin.plate;

import dev.quoin.shop.Step;
import dev.quoin.toolpath.Tally;
import java.util.ArrayList;
import java.util.List;

/**
 * What a step takes over all items of a plate.
 *
 * @param saved by ordering the travel, against the order of the file, s
 * @param missed the numbers of the items that have marks for it of which no line is left
 */
public record StepTime(Step step, Tally tally, double saved, List<Integer> missed) {
    public StepTime {
        missed = List.copyOf(missed);
    }

    /** What each step takes over several parts, of which each has the same steps. */
    public static List<StepTime> sums(List<List<StepTime>> parts) {
        List<StepTime> sums = new ArrayList<>(parts.get(0));
        for (List<StepTime> part : parts.subList(1, parts.size())) {
            for (int i = 0; i < sums.size(); i++) {
                sums.set(i, sums.get(i).plus(part.get(i)));
            }
        }
        return sums;
    }

    /** This and what the same step takes on another part of the plate. */
    private StepTime plus(StepTime other) {
        List<Integer> all = new ArrayList<>(missed);
        all.addAll(other.missed);
        return new StepTime(step, tally.plus(other.tally), saved + other.saved, all);
    }
}
