package dev.quoin.plate;

import java.util.List;

/**
 * What is marked on a plate while its jig stands in one way. It has a file of its own, or one for each step.
 *
 * @param number from 1, in working order
 * @param seats of the items that are marked, each where it lies in the field for this part; in the order of the plate's
 */
public record Part(int number, Stand stand, List<Seat> seats) {
    public Part {
        seats = List.copyOf(seats);
    }
}
