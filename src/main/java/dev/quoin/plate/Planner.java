package dev.quoin.plate;

import java.util.ArrayList;
import java.util.List;

/** Lays items into slots, in the order given, opening a new plate whenever the jig is full. */
public final class Planner {
    private final List<Plate> plates = new ArrayList<>();

    /**
     * Adds the plates of one group, numbered on from the last.
     *
     * @param items the numbers of its items, in working order
     * @param open the slots that may be filled, in the order in which they are filled; at least one if there are items
     */
    public void add(Group group, List<Integer> items, List<Placement> open) {
        if (open.isEmpty() && !items.isEmpty()) {
            throw new IllegalArgumentException("no slot to fill for " + group.describe());
        }
        for (int from = 0; from < items.size(); from += open.size()) {
            List<Seat> seats = new ArrayList<>();
            int to = Math.min(from + open.size(), items.size());
            for (int i = from; i < to; i++) {
                seats.add(new Seat(items.get(i), open.get(i - from)));
            }
            plates.add(new Plate(plates.size() + 1, group, seats));
        }
    }

    /** All plates so far, in working order. */
    public List<Plate> plates() {
        return List.copyOf(plates);
    }
}
