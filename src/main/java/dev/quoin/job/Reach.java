package dev.quoin.job;

import dev.quoin.plate.Group;
import dev.quoin.plate.Placement;
import dev.quoin.plate.SlotState;
import dev.quoin.shop.Jig;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How many slots of some jigs a lens reaches.
 *
 * @param reached those that can be filled; of a jig that several groups use, the fewest for any
 * @param usable those, and the ones that only the lens keeps from being filled
 */
record Reach(int reached, int usable) {
    static Reach of(Map<Group, Map<Placement, SlotState>> slots) {
        Map<Jig, Reach> jigs = new LinkedHashMap<>();
        slots.forEach((group, states) -> jigs.merge(group.jig(), ofOne(states), Reach::least));
        return jigs.values().stream()
                .reduce(new Reach(0, 0), (a, b) -> new Reach(a.reached + b.reached, a.usable + b.usable));
    }

    private static Reach ofOne(Map<Placement, SlotState> states) {
        int open = count(states, SlotState.OPEN);
        return new Reach(open, open + count(states, SlotState.OUT_OF_REACH));
    }

    private Reach least(Reach other) {
        return other.reached < reached ? other : this;
    }

    private static int count(Map<Placement, SlotState> states, SlotState wanted) {
        return (int) states.values().stream().filter(state -> state == wanted).count();
    }
}
