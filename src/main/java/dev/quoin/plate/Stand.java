package dev.quoin.plate;

import java.util.Optional;

/**
 * How a loaded jig stands for one part of a plate, against how it was loaded.
 *
 * @param flip the axis about which it is turned over; empty while the front of the pieces is up
 * @param dx how far it is shifted to the right, in its own directions, mm
 * @param dy how far it is shifted up, away from the operator, mm
 * @param band the strip of a round piece that is on top; empty for flat ones
 */
public record Stand(Optional<FlipAxis> flip, double dx, double dy, Optional<Band> band) {
    /** Tables give three decimals. */
    private static final double ROUNDING = 0.00075;

    /** As it was loaded. */
    public static final Stand LOADED = at(0, 0);

    /** Shifted, with the front up. */
    public static Stand at(double dx, double dy) {
        return new Stand(Optional.empty(), dx, dy, Optional.empty());
    }

    /** The same turned over. */
    public Stand turnedOver(FlipAxis axis) {
        return new Stand(Optional.of(axis), dx, dy, band);
    }

    /** A round piece with a strip of it on top. */
    public static Stand of(Band band) {
        return new Stand(Optional.empty(), 0, 0, Optional.of(band));
    }

    /** The same as a table gives it, to its last digit. */
    public boolean isLike(Stand other) {
        return flip.equals(other.flip)
                && distance(other) < ROUNDING
                && band.isPresent() == other.band.isPresent()
                && Math.abs(turn() - other.turn()) < ROUNDING;
    }

    /** How far a round piece is turned, degrees; 0 for a flat one. */
    public double turn() {
        return band.map(Band::turn).orElse(0.0);
    }

    /** How far the jig is shifted from one to the other, mm. */
    double distance(Stand other) {
        return Math.hypot(dx - other.dx, dy - other.dy);
    }

    /** Whether the jig is shifted, or a round piece turned, to stand so after it has stood otherwise. */
    public boolean isShiftedFrom(Stand before) {
        return distance(before) > 0 || turn() != before.turn();
    }

    /** Whether the whole jig, its pieces in it, is turned over to stand so. */
    public boolean isTurnedOverFrom(Stand before) {
        return isBack() != before.isBack();
    }

    /** Whether the back of the pieces is up. */
    public boolean isBack() {
        return flip.isPresent();
    }
}
