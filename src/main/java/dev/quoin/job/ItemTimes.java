package dev.quoin.job;

import dev.quoin.plate.Placement;
import dev.quoin.plate.Plate;
import dev.quoin.plate.PlateTime;
import dev.quoin.plate.Seat;
import java.util.Optional;

/** Where each item of a run lies and what it takes; by item number. */
final class ItemTimes {
    private final Seat[] seats;
    private final int[] plates;
    private final double[] seconds;

    ItemTimes(int items) {
        seats = new Seat[items];
        plates = new int[items];
        seconds = new double[items];
    }

    void take(Plate plate, PlateTime time) {
        for (int i = 0; i < plate.seats().size(); i++) {
            Seat seat = plate.seats().get(i);
            seats[seat.item() - 1] = seat;
            plates[seat.item() - 1] = plate.number();
            seconds[seat.item() - 1] = time.itemSeconds().get(i);
        }
    }

    /** Where an item lies; empty for one that is left out. */
    Optional<Placement> placement(int item) {
        return Optional.ofNullable(seats[item - 1]).map(Seat::placement);
    }

    int plate(int item) {
        return plates[item - 1];
    }

    /** Its strokes, the jumps inside it and those into it, s. */
    double seconds(int item) {
        return seconds[item - 1];
    }
}
