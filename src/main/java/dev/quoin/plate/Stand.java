package dev.quoin.plate;

import java.util.Optional;

/**
 * How a loaded jig stands for one part of a plate, against how it was loaded.
 *
 * @param flip the axis about which it is turned over; empty while the front of the pieces is up
 * @param dx how far it is shifted to the right, in its own directions, mm
 * @param dy how far it is shifted up, away from the operator, mm
 * @param turn how far a round piece is turned about its axis, degrees
 */
public record Stand(Optional<FlipAxis> flip, double dx, double dy, double turn) {
    /** As it was loaded. */
    public static final Stand LOADED = new Stand(Optional.empty(), 0, 0, 0);

    /** Whether the back of the pieces is up. */
    public boolean isBack() {
        return flip.isPresent();
    }
}
