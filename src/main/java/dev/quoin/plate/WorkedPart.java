package dev.quoin.plate;

import java.util.List;

/**
 * A part of a plate with all that is worked out for it.
 *
 * @param items in seat order, areas as areas
 * @param timed what it takes, and the same items as they go into files
 */
public record WorkedPart(Part part, List<LoadedItem> items, TimedPlate timed) {
    public WorkedPart {
        items = List.copyOf(items);
    }

    public PlateTime time() {
        return timed.time();
    }
}
