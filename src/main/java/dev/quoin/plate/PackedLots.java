package dev.quoin.plate;

import java.util.List;

/**
 * Lots laid onto plates.
 *
 * @param loads the items of each plate, those of a lot next to one another; the first may be empty, if no lot fits into a
 *     jig that is filled in part
 * @param bound so many plates are needed, proven, one that is filled in part included
 * @param split how many lots are larger than a plate
 */
public record PackedLots(List<List<Integer>> loads, int bound, int split) {
    public PackedLots {
        loads = loads.stream().map(List::copyOf).toList();
    }
}
