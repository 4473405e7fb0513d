package dev.quoin.geometry;

/** Takes the pieces of a {@link Path} in order; coordinates in mm. */
public interface PathVisitor {
    void moveTo(double x, double y);

    void lineTo(double x, double y);

    void quadTo(double cx, double cy, double x, double y);

    void cubicTo(double c1x, double c1y, double c2x, double c2y, double x, double y);

    void close();
}
