package dev.quoin.plate;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;

/**
 * From which stands of a jig each of its slots is reached, with one side up.
 *
 * @param placements of all slots, for each stand
 * @param reached the indexes of the stands that reach each slot, by its id
 */
public record Stations(List<Stand> stands, List<List<Placement>> placements, Map<String, BitSet> reached) {
    public Stations {
        stands = List.copyOf(stands);
        placements = List.copyOf(placements);
        reached = Map.copyOf(reached);
    }

    /** The fewest stands that reach these slots, each of which some stand reaches. */
    public SetCover.Cover fewest(List<String> slots) {
        List<BitSet> sets = new ArrayList<>();
        for (int stand = 0; stand < stands.size(); stand++) {
            BitSet set = new BitSet();
            for (int slot = 0; slot < slots.size(); slot++) {
                set.set(slot, reached.get(slots.get(slot)).get(stand));
            }
            sets.add(set);
        }
        return SetCover.of(sets, slots.size());
    }

    /** Those of these stands that reach a slot, one of them; the first in their order. */
    int first(List<Integer> order, String slot) {
        return order.stream()
                .filter(stand -> reached.get(slot).get(stand))
                .findFirst()
                .orElseThrow();
    }

    /** A slot as it lies in the field in a stand. */
    Placement placement(int stand, String slot) {
        return placements.get(stand).stream()
                .filter(placement -> placement.slot().id().equals(slot))
                .findFirst()
                .orElseThrow();
    }

    /** These stands in working order: from where the jig stands, always the nearest of those left. */
    List<Integer> inWorkingOrder(List<Integer> chosen, Stand from) {
        List<Integer> left = new ArrayList<>(chosen);
        List<Integer> order = new ArrayList<>();
        Stand now = from;
        while (!left.isEmpty()) {
            Integer next = left.get(0);
            for (Integer one : left) {
                if (stands.get(one).distance(now) < stands.get(next).distance(now)) {
                    next = one;
                }
            }
            left.remove(next);
            order.add(next);
            now = stands.get(next);
        }
        return order;
    }
}
