package dev.quoin.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Lays items into slots, and numbers the plates. */
public final class Planner {
    private final List<Plate> plates = new ArrayList<>();
    private final int before;

    /**
     * No plates yet.
     *
     * @param before how many plates the run has already
     */
    public Planner(int before) {
        this.before = before;
    }

    /**
     * Adds the plates of one group, numbered on from the last.
     *
     * @param loads the numbers of the items on each plate, in the order in which they are laid into its slots; one that
     *     holds none makes no plate
     * @param open the slots that may be filled
     * @param parts the parts of a plate with such seats
     */
    public void add(Group group, List<List<Integer>> loads, OpenSlots open, Function<List<Seat>, List<Part>> parts) {
        for (int i = 0; i < loads.size(); i++) {
            List<Integer> load = loads.get(i);
            List<Placement> slots = open.ofPlate(i);
            if (load.size() > slots.size()) {
                throw new IllegalArgumentException(load.size() + " items for " + slots.size() + " slots");
            }
            if (!load.isEmpty()) {
                List<Seat> seats = seats(load, slots);
                plates.add(new Plate(before + plates.size() + 1, group, seats, parts.apply(seats)));
            }
        }
    }

    private static List<Seat> seats(List<Integer> load, List<Placement> slots) {
        List<Seat> seats = new ArrayList<>();
        for (int i = 0; i < load.size(); i++) {
            seats.add(new Seat(load.get(i), slots.get(i)));
        }
        return seats;
    }

    /** All plates so far, in working order. */
    public List<Plate> plates() {
        return List.copyOf(plates);
    }
}
