package dev.quoin.geometry;

/** A point, in mm. */
public record Point(double x, double y) {
    public static final Point ORIGIN = new Point(0, 0);

    /** The distance to another point, mm. */
    public double distance(Point other) {
        return Math.hypot(other.x - x, other.y - y);
    }
}
