package dev.quoin.shop;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Point;

/**
 * One place of a jig.
 *
 * @param centre in jig coordinates, mm (x right, y up)
 * @param rotation anticlockwise, degrees
 * @param width of its pocket before the turn, mm
 * @param height of its pocket before the turn, mm
 * @param pocket the pocket's outline around the origin, before the turn, y up
 * @param usable whether blanks may be laid in it
 * @param z how much higher its floor lies than what the height of the lens is set to, mm; less than 0 if it lies lower
 */
public record Slot(
        String id, Point centre, double rotation, double width, double height, Path pocket, boolean usable, double z) {
    /** A slot at the height that the lens is set to. */
    public Slot(String id, Point centre, double rotation, double width, double height, Path pocket, boolean usable) {
        this(id, centre, rotation, width, height, pocket, usable, 0);
    }

    /** The move of an item, from its own coordinates into the jig's. */
    public Affine pose() {
        return Affine.rotate(rotation).then(Affine.translate(centre.x(), centre.y()));
    }
}
