package dev.quoin.plate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How the jig is filled.
 *
 * @param skipped ids of slots that are left empty
 * @param firstSlot the slot with which the first plate begins; those before it are taken
 */
public record Filling(FillOrder order, Set<String> skipped, Optional<String> firstSlot) {
    public Filling {
        skipped = Set.copyOf(skipped);
    }

    /** The slots in the order in which they are filled, with those that are left empty marked so. */
    public Map<Placement, SlotState> states(Map<Placement, SlotState> states) {
        Map<Placement, SlotState> ordered = new LinkedHashMap<>();
        for (Placement placement : order.sort(List.copyOf(states.keySet()))) {
            SlotState state = states.get(placement);
            boolean skip = (state == SlotState.OPEN || state == SlotState.OUT_OF_REACH)
                    && skipped.contains(placement.slot().id());
            ordered.put(placement, skip ? SlotState.SKIPPED : state);
        }
        return ordered;
    }

    /**
     * The slots that may be filled.
     *
     * @param states in the order in which they are filled
     * @param startsTheRun whether the first of these plates is the run's first
     */
    public OpenSlots open(Map<Placement, SlotState> states, boolean startsTheRun) {
        List<Placement> all = new ArrayList<>();
        List<Placement> first = new ArrayList<>();
        boolean begun = !startsTheRun || firstSlot.isEmpty();
        for (Map.Entry<Placement, SlotState> entry : states.entrySet()) {
            begun = begun || entry.getKey().slot().id().equals(firstSlot.get());
            if (entry.getValue() == SlotState.OPEN) {
                all.add(entry.getKey());
                if (begun) {
                    first.add(entry.getKey());
                }
            }
        }
        return new OpenSlots(first, all);
    }
}
