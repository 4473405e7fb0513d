package dev.quoin.plate;

import java.util.List;

/**
 * One loading of the jig.
 *
 * @param number from 1, in working order
 * @param seats in slot order; at most one for each slot
 */
public record Plate(int number, Group group, List<Seat> seats) {
    public Plate {
        seats = List.copyOf(seats);
    }
}
