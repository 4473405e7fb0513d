package dev.quoin.plate;

import java.util.List;

/**
 * A plate that was timed, as it goes into files.
 *
 * @param items in seat order; in a hatched run, the marks of fill steps are the lines of the hatch, a path a pass
 */
public record TimedPlate(PlateTime time, List<LoadedItem> items) {
    public TimedPlate {
        items = List.copyOf(items);
    }
}
