package dev.quoin.plate;

/**
 * An item in its place on a plate.
 *
 * @param item the item's number
 */
public record Seat(int item, Placement placement) {
    /** The same item where it lies otherwise; itself if it lies so already, since a large order has many. */
    Seat at(Placement there) {
        return there.equals(placement) ? this : new Seat(item, there);
    }
}
