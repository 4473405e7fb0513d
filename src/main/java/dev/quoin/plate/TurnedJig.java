package dev.quoin.plate;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Point;
import dev.quoin.shop.Jig;
import dev.quoin.shop.Slot;

/**
 * A jig that is turned over as a whole, with its pieces, about an axis through its centre. The back of a piece is drawn as
 * it is seen when the piece is turned like a page: its top stays its top. So a slot at (x, y) from the centre, turned by t,
 * comes to (-x, y) and -t about the vertical axis, to (x, -y) and 180 - t about the horizontal one, and its pocket is
 * mirrored left to right; what lay high lies low. What holds the jig stays, so it lies as far from where it should as before.
 */
final class TurnedJig {
    private TurnedJig() {}

    static Jig of(Jig jig, FlipAxis axis) {
        return new Jig(
                jig.name(),
                jig.centre(),
                jig.slots().stream()
                        .map(slot -> turned(slot, jig.centre(), axis))
                        .toList(),
                jig.shift(),
                jig.round());
    }

    private static Slot turned(Slot slot, Point about, FlipAxis axis) {
        Point centre = slot.centre();
        boolean vertical = axis == FlipAxis.Y;
        return new Slot(
                slot.id(),
                new Point(
                        vertical ? 2 * about.x() - centre.x() : centre.x(),
                        vertical ? centre.y() : 2 * about.y() - centre.y()),
                vertical ? -slot.rotation() : 180 - slot.rotation(),
                slot.width(),
                slot.height(),
                slot.pocket().transform(Affine.scale(-1, 1)),
                slot.usable(),
                -slot.z());
    }
}
