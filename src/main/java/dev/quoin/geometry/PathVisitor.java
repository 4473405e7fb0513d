package dev.quoin.geometry;

/** Takes the pieces of a {@link Path} in order; coordinates in mm. */
public interface PathVisitor {
    void moveTo(double x, double y);

    void lineTo(double x, double y);

    void quadTo(double cx, double cy, double x, double y);

    void cubicTo(double c1x, double c1y, double c2x, double c2y, double x, double y);

    void close();

    /**
     * Pieces that are one straight line each, a move and a line; in one call since hatches are made of them.
     *
     * @param xy holds the start and the end of each in turn from {@code from} to {@code to}
     */
    default void segments(double[] xy, int from, int to) {
        for (int i = from; i < to; i += 4) {
            moveTo(xy[i], xy[i + 1]);
            lineTo(xy[i + 2], xy[i + 3]);
        }
    }
}
