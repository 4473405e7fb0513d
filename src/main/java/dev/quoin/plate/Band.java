package dev.quoin.plate;

/**
 * A strip along a round piece that is marked without turning it.
 *
 * @param from where it begins on the surface, around the piece from the drawing's middle, mm
 * @param to where it ends, mm; more than {@code from}
 * @param turn how far the piece is turned so that the strip's middle lies on top, degrees
 */
public record Band(double from, double to, double turn) {
    /** Its middle, mm. */
    public double middle() {
        return (from + to) / 2;
    }
}
