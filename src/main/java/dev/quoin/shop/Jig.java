package dev.quoin.shop;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Point;
import java.util.List;
import java.util.Optional;

/**
 * The fixture that holds blanks.
 *
 * @param name its file's name without the extension
 * @param centre the point that stands at the field's centre, in jig coordinates, mm
 * @param slots in the order in which they are filled
 * @param shift how it really lies against that
 * @param round the round piece that it turns; empty for a jig of flat ones
 */
public record Jig(String name, Point centre, List<Slot> slots, JigShift shift, Optional<Cylinder> round) {
    public Jig {
        slots = List.copyOf(slots);
    }

    /** A jig that lies as it should. */
    public Jig(String name, Point centre, List<Slot> slots) {
        this(name, centre, slots, JigShift.NONE, Optional.empty());
    }

    /** What turns one round piece: its slot is the piece's surface, unrolled. */
    public static Jig turning(Cylinder piece) {
        Path surface = Path.of(Box.centred(piece.circumference(), piece.height()));
        Slot slot = new Slot("1", Point.ORIGIN, 0, piece.circumference(), piece.height(), surface, true);
        return new Jig(piece.name(), Point.ORIGIN, List.of(slot), JigShift.NONE, Optional.of(piece));
    }

    public Jig centredAt(Point newCentre) {
        return new Jig(name, newCentre, slots, shift, round);
    }

    public Jig shifted(JigShift newShift) {
        return new Jig(name, centre, slots, newShift, round);
    }
}
