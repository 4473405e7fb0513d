package dev.quoin.plate;

import java.util.List;

/**
 * Pieces laid into bins of one capacity.
 *
 * @param bins the indexes of the pieces in each, ascending
 * @param bound so many bins are needed by any packing, proven ({@link PackingBound})
 */
public record Packing(List<List<Integer>> bins, int bound) {
    public Packing {
        bins = bins.stream().map(List::copyOf).toList();
    }

    /** Whether no packing can have fewer bins. */
    public boolean isProvenLeast() {
        return bins.size() == bound;
    }
}
