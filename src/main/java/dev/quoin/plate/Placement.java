package dev.quoin.plate;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Point;
import dev.quoin.shop.Slot;

/**
 * A slot as it lies in the field.
 *
 * @param pose the move of an item from its own coordinates into the field's, mm
 */
public record Placement(Slot slot, Affine pose) {
    /** Where the item's centre lies in the field, mm. */
    public Point centre() {
        return new Point(pose.e(), pose.f());
    }

    /** The turn of the item's x axis in the field, degrees anticlockwise. */
    public double rotation() {
        return pose.rotation();
    }

    /** The pose without its shift: how the item is turned (and, in a mirrored field, mirrored). */
    public Affine turn() {
        return new Affine(pose.a(), pose.b(), pose.c(), pose.d(), 0, 0);
    }
}
