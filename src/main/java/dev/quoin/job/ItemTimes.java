package dev.quoin.job;

import dev.quoin.plate.Part;
import dev.quoin.plate.Seat;
import dev.quoin.plate.WorkedPart;
import dev.quoin.plate.WorkedPlate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Where each item of a run lies and what it takes, in each part in which it is marked; by item number. */
final class ItemTimes {
    private final ItemTime[] first;
    /** Of items that are marked in more than one part, what follows the first. */
    private final Map<Integer, List<ItemTime>> later = new HashMap<>();

    ItemTimes(int items) {
        first = new ItemTime[items];
    }

    void take(WorkedPlate worked) {
        for (WorkedPart part : worked.parts()) {
            List<Seat> seats = part.part().seats();
            for (int i = 0; i < seats.size(); i++) {
                add(
                        worked.plate().number(),
                        part.part(),
                        seats.get(i),
                        part.time().itemSeconds().get(i));
            }
        }
    }

    private void add(int plate, Part part, Seat seat, double seconds) {
        ItemTime time = new ItemTime(plate, part, seat, seconds);
        if (first[seat.item() - 1] == null) {
            first[seat.item() - 1] = time;
        } else {
            later.computeIfAbsent(seat.item(), made -> new ArrayList<>()).add(time);
        }
    }

    /** Each part in which an item is marked, in working order; none for one that is left out. */
    List<ItemTime> of(int item) {
        if (first[item - 1] == null) {
            return List.of();
        }
        List<ItemTime> all = new ArrayList<>();
        all.add(first[item - 1]);
        all.addAll(later.getOrDefault(item, List.of()));
        return all;
    }
}
