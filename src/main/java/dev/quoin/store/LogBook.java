package dev.quoin.store;

import java.util.List;

/**
 * What the record of a run says.
 *
 * @param events in the order in which they were added
 * @param cutShort the numbers of the lines, from 1, that a kill cut short; they count for nothing
 * @param damaged the numbers of the lines that are not as they were added; they count for nothing either
 */
public record LogBook(List<RunEvent> events, List<Integer> cutShort, List<Integer> damaged) {
    public LogBook {
        events = List.copyOf(events);
        cutShort = List.copyOf(cutShort);
        damaged = List.copyOf(damaged);
    }
}
