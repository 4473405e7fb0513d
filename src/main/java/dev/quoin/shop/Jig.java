package dev.quoin.shop;

import dev.quoin.geometry.Point;
import java.util.List;

/**
 * The fixture that holds blanks.
 *
 * @param name its file's name without the extension
 * @param centre the point that stands at the field's centre, in jig coordinates, mm
 * @param slots in the order in which they are filled
 * @param shift how it really lies against that
 */
public record Jig(String name, Point centre, List<Slot> slots, JigShift shift) {
    public Jig {
        slots = List.copyOf(slots);
    }

    /** A jig that lies as it should. */
    public Jig(String name, Point centre, List<Slot> slots) {
        this(name, centre, slots, JigShift.NONE);
    }

    public Jig centredAt(Point newCentre) {
        return new Jig(name, newCentre, slots, shift);
    }

    public Jig shifted(JigShift newShift) {
        return new Jig(name, centre, slots, newShift);
    }
}
