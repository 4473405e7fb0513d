package dev.quoin.job;

import dev.quoin.plate.Part;
import dev.quoin.plate.Seat;
import dev.quoin.plate.WorkedPart;
import dev.quoin.plate.WorkedPlate;
import java.util.ArrayList;
import java.util.List;

/** Where each item of a run lies and what it takes, in each part in which it is marked; packed, since items are many. */
final class ItemTimes {
    private final List<TimedParts> plates = new ArrayList<>();
    /** For each item the place of its plate in the list, counted from 1; 0 if it is on none. */
    private final int[] plateOf;

    ItemTimes(int items) {
        plateOf = new int[items];
    }

    /**
     * A plate's parts.
     *
     * @param seconds of each seat of each part
     */
    private record TimedParts(int plate, List<Part> parts, List<double[]> seconds) {}

    void take(WorkedPlate worked) {
        List<Part> parts = worked.parts().stream().map(WorkedPart::part).toList();
        List<double[]> seconds = worked.parts().stream()
                .map(part -> part.time().itemSeconds().stream()
                        .mapToDouble(Double::doubleValue)
                        .toArray())
                .toList();
        plates.add(new TimedParts(worked.plate().number(), parts, seconds));
        for (Part part : parts) {
            part.seats().forEach(seat -> plateOf[seat.item() - 1] = plates.size());
        }
    }

    /** Each part in which an item is marked, in working order; none for one that is left out. */
    List<ItemTime> of(int item) {
        List<ItemTime> found = new ArrayList<>();
        if (plateOf[item - 1] > 0) {
            TimedParts plate = plates.get(plateOf[item - 1] - 1);
            for (int i = 0; i < plate.parts().size(); i++) {
                List<Seat> seats = plate.parts().get(i).seats();
                for (int j = 0; j < seats.size(); j++) {
                    if (seats.get(j).item() == item) {
                        found.add(new ItemTime(
                                plate.plate(),
                                plate.parts().get(i),
                                seats.get(j),
                                plate.seconds().get(i)[j]));
                    }
                }
            }
        }
        return found;
    }
}
