package dev.quoin.geometry;

/** Takes the pieces of a {@link Path} in order; coordinates in mm. */
public interface PathVisitor {
    void moveTo(double x, double y);

    void lineTo(double x, double y);

    void quadTo(double cx, double cy, double x, double y);

    void cubicTo(double c1x, double c1y, double c2x, double c2y, double x, double y);

    void close();

    /** A piece that is one straight line: a move and a line, in one call since hatches are made of them. */
    default void segment(double x1, double y1, double x2, double y2) {
        moveTo(x1, y1);
        lineTo(x2, y2);
    }
}
