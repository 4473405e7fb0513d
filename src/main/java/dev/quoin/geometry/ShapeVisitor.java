package dev.quoin.geometry;

import java.awt.geom.Path2D;

/** Draws a path into a platform path. */
record ShapeVisitor(Path2D shape) implements PathVisitor {
    @Override
    public void moveTo(double x, double y) {
        shape.moveTo(x, y);
    }

    @Override
    public void lineTo(double x, double y) {
        shape.lineTo(x, y);
    }

    @Override
    public void quadTo(double cx, double cy, double x, double y) {
        shape.quadTo(cx, cy, x, y);
    }

    @Override
    public void cubicTo(double c1x, double c1y, double c2x, double c2y, double x, double y) {
        shape.curveTo(c1x, c1y, c2x, c2y, x, y);
    }

    @Override
    public void close() {
        shape.closePath();
    }
}
