package dev.quoin.plate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Parts the plates of a group: each side in the fewest stations. A slot belongs to the same station on all plates, but on
 * a plate that is filled in part and can do with fewer.
 */
public final class PartPlan {
    private final List<Stations> sides;
    private final List<SetCover.Cover> whole = new ArrayList<>();
    private final Map<List<String>, List<Integer>> fewest = new HashMap<>();

    /**
     * A plan.
     *
     * @param sides the front and, if it is marked, the back
     * @param open the ids of the slots that may be filled
     */
    public PartPlan(List<Stations> sides, List<String> open) {
        this.sides = List.copyOf(sides);
        sides.forEach(side -> whole.add(side.fewest(open)));
    }

    /** The stands in which a full plate is marked on each side, in no order. */
    public List<List<Stand>> stands() {
        List<List<Stand>> stands = new ArrayList<>();
        for (int i = 0; i < sides.size(); i++) {
            stands.add(
                    whole.get(i).sets().stream().map(sides.get(i).stands()::get).toList());
        }
        return stands;
    }

    /** Whether it is proven that no fewer would do. */
    public boolean isProven() {
        return whole.stream().allMatch(SetCover.Cover::proven);
    }

    /** The parts of a plate with these seats. */
    public List<Part> parts(List<Seat> seats) {
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < sides.size(); i++) {
            Stand now =
                    parts.isEmpty() ? Stand.LOADED : parts.get(parts.size() - 1).stand();
            Stations side = sides.get(i);
            SortedMap<Integer, List<Seat>> byStation = new TreeMap<>();
            List<Integer> order = side.inWorkingOrder(chosen(i, seats), now);
            for (Seat seat : seats) {
                String slot = seat.placement().slot().id();
                int stand = side.first(order, slot);
                byStation
                        .computeIfAbsent(order.indexOf(stand), made -> new ArrayList<>())
                        .add(seat.at(side.placement(stand, slot)));
            }
            for (Map.Entry<Integer, List<Seat>> station : byStation.entrySet()) {
                Stand stand = side.stands().get(order.get(station.getKey()));
                parts.add(new Part(parts.size() + 1, stand, station.getValue()));
            }
        }
        return parts;
    }

    private List<Integer> chosen(int index, List<Seat> seats) {
        Stations side = sides.get(index);
        List<Integer> all = whole.get(index).sets();
        if (all.size() == 1) {
            return all;
        }
        List<String> slots =
                seats.stream().map(seat -> seat.placement().slot().id()).toList();
        long used = slots.stream().map(slot -> side.first(all, slot)).distinct().count();
        List<String> key = new ArrayList<>(slots);
        key.add(Integer.toString(index));
        List<Integer> own =
                fewest.computeIfAbsent(key, made -> side.fewest(slots).sets());
        return own.size() < used ? own : all;
    }
}
