package dev.quoin.plate;

import java.util.ArrayList;
import java.util.List;

/**
 * One loading of the jig.
 *
 * @param number from 1, in working order
 * @param seats in slot order, as the jig lies when it is loaded; at most one for each slot
 * @param parts what is marked on it, in working order; at least one
 */
public record Plate(int number, Group group, List<Seat> seats, List<Part> parts) {
    public Plate {
        seats = List.copyOf(seats);
        parts = List.copyOf(parts);
    }

    /** The same plate with some of its parts, numbered anew. */
    public Plate keeping(List<Part> some) {
        List<Part> numbered = new ArrayList<>();
        some.forEach(part -> numbered.add(new Part(numbered.size() + 1, part.stand(), part.seats())));
        return new Plate(number, group, seats, numbered);
    }
}
