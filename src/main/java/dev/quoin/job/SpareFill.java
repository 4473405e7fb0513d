package dev.quoin.job;

import dev.quoin.plate.OpenSlots;
import java.util.ArrayList;
import java.util.List;

/** Fills the last plate of a group with pieces whose numbers follow those of all items. */
final class SpareFill {
    private final List<List<Integer>> loads;
    private int added;

    /**
     * Fills it.
     *
     * @param loads the items of each plate of the group
     * @param items how many items there are in all
     */
    SpareFill(List<List<Integer>> loads, OpenSlots open, int items) {
        this.loads = new ArrayList<>(loads);
        if (!loads.isEmpty()) {
            int last = loads.size() - 1;
            List<Integer> load = new ArrayList<>(loads.get(last));
            int slots = open.ofPlate(last).size();
            while (load.size() < slots) {
                load.add(items + ++added);
            }
            this.loads.set(last, load);
        }
    }

    List<List<Integer>> filled() {
        return loads;
    }

    /** How many pieces were added. */
    int added() {
        return added;
    }
}
