package dev.quoin.shop;

import dev.quoin.geometry.Point;
import java.util.List;

/**
 * The fixture that holds blanks.
 *
 * @param name its file's name without the extension
 * @param centre the point that stands at the field's centre, in jig coordinates, mm
 * @param slots in the order in which they are filled
 */
public record Jig(String name, Point centre, List<Slot> slots) {
    public Jig {
        slots = List.copyOf(slots);
    }

    public Jig centredAt(Point newCentre) {
        return new Jig(name, newCentre, slots);
    }
}
