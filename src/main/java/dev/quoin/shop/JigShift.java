package dev.quoin.shop;

import dev.quoin.geometry.Affine;

/**
 * How a jig really lies against where it should: turned about the field's centre, then shifted; in the jig's own
 * directions, as one sees it at the machine.
 *
 * @param dx to the right, mm
 * @param dy up, away from the operator, mm
 * @param angle anticlockwise, degrees
 */
public record JigShift(double dx, double dy, double angle) {
    public static final JigShift NONE = new JigShift(0, 0, 0);

    /** The move from where it should lie to where it lies; the origin is the field's centre. */
    public Affine move() {
        return Affine.rotate(angle).then(Affine.translate(dx, dy));
    }
}
