package dev.quoin.geometry;

/**
 * A box with sides along the axes, in mm. {@link #EMPTY} holds nothing, and is the neutral element of {@link #union}.
 */
public record Box(double minX, double minY, double maxX, double maxY) {
    public static final Box EMPTY = new Box(
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);

    /** A box of this size around the origin. */
    public static Box centred(double width, double height) {
        return new Box(-width / 2, -height / 2, width / 2, height / 2);
    }

    public boolean isEmpty() {
        return minX > maxX || minY > maxY;
    }

    public double width() {
        return isEmpty() ? 0 : maxX - minX;
    }

    public double height() {
        return isEmpty() ? 0 : maxY - minY;
    }

    public Point centre() {
        return new Point((minX + maxX) / 2, (minY + maxY) / 2);
    }

    public Box union(Box other) {
        return new Box(
                Math.min(minX, other.minX),
                Math.min(minY, other.minY),
                Math.max(maxX, other.maxX),
                Math.max(maxY, other.maxY));
    }

    public Box include(double x, double y) {
        return new Box(Math.min(minX, x), Math.min(minY, y), Math.max(maxX, x), Math.max(maxY, y));
    }

    /** The box grown on each side by this much, mm; less than zero shrinks it. */
    public Box grow(double by) {
        return isEmpty() ? this : new Box(minX - by, minY - by, maxX + by, maxY + by);
    }

    /** Whether the two have a point in common. */
    public boolean meets(Box other) {
        return minX <= other.maxX && other.minX <= maxX && minY <= other.maxY && other.minY <= maxY;
    }

    /** Whether the other box lies inside, its edge allowed to stand over by {@code tolerance} mm. */
    public boolean contains(Box other, double tolerance) {
        return other.isEmpty()
                || (other.minX >= minX - tolerance
                        && other.minY >= minY - tolerance
                        && other.maxX <= maxX + tolerance
                        && other.maxY <= maxY + tolerance);
    }
}
