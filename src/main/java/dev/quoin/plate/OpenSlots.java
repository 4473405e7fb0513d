package dev.quoin.plate;

import java.util.ArrayList;
import java.util.List;

/**
 * The slots that may be filled, in the order in which they are filled.
 *
 * @param first those of the first plate, which may be a jig that is filled in part
 * @param later those of every plate after it; at least as many
 */
public record OpenSlots(List<Placement> first, List<Placement> later) {
    public OpenSlots {
        first = List.copyOf(first);
        later = List.copyOf(later);
        if (first.size() > later.size()) {
            throw new IllegalArgumentException("more slots on the first plate than on the others");
        }
    }

    /** The same slots on every plate. */
    public static OpenSlots onAll(List<Placement> slots) {
        return new OpenSlots(slots, slots);
    }

    public boolean isEmpty() {
        return later.isEmpty();
    }

    /** Those of a plate of the group, by its index. */
    public List<Placement> ofPlate(int index) {
        return index == 0 ? first : later;
    }

    /** What each plate holds when items are laid into slot after slot, a new plate begun whenever one is full. */
    public List<List<Integer>> inTurn(List<Integer> items) {
        List<List<Integer>> loads = new ArrayList<>();
        int from = 0;
        while (from < items.size()) {
            int to = Math.min(items.size(), from + ofPlate(loads.size()).size());
            loads.add(List.copyOf(items.subList(from, to)));
            from = to;
        }
        return loads;
    }
}
