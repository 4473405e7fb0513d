package dev.quoin.plate;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Point;
import dev.quoin.shop.Slot;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Small jigs to plan with: pockets of 10 x 10 mm. */
final class Trays {
    private Trays() {}

    /** Slots A1, A2, ... B1, ...: A is the upper row; the pitch is 20 mm, and the tray's middle the field's. */
    static List<Placement> tray(int rows, int columns) {
        List<Placement> placements = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                Point centre = new Point(20 * (column - (columns - 1) / 2.0), 20 * ((rows - 1) / 2.0 - row));
                Slot slot = new Slot(
                        (char) ('A' + row) + "" + (column + 1), centre, 0, 10, 10, Path.of(Box.centred(10, 10)), true);
                placements.add(new Placement(slot, Affine.translate(centre.x(), centre.y())));
            }
        }
        return placements;
    }

    static OpenSlots slots(int count) {
        return OpenSlots.onAll(tray(1, count));
    }

    /** The first plate has only the last {@code first} slots left. */
    static OpenSlots partFilled(int first, int count) {
        List<Placement> all = tray(1, count);
        return new OpenSlots(all.subList(count - first, count), all);
    }

    static String ids(List<Placement> placements) {
        return placements.stream().map(placement -> placement.slot().id()).collect(Collectors.joining(" "));
    }
}
