package dev.quoin.drawing;

import dev.quoin.geometry.PathVisitor;
import dev.quoin.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Where the pieces of a path end, and their control points on the way. */
final class PathEnds implements PathVisitor {
    final List<Point> ends = new ArrayList<>();
    final List<Point> all = new ArrayList<>();

    @Override
    public void moveTo(double x, double y) {
        end(x, y);
    }

    @Override
    public void lineTo(double x, double y) {
        end(x, y);
    }

    @Override
    public void quadTo(double cx, double cy, double x, double y) {
        all.add(new Point(cx, cy));
        end(x, y);
    }

    @Override
    public void cubicTo(double c1x, double c1y, double c2x, double c2y, double x, double y) {
        all.add(new Point(c1x, c1y));
        all.add(new Point(c2x, c2y));
        end(x, y);
    }

    @Override
    public void close() {
        // It has no coordinates of its own.
    }

    private void end(double x, double y) {
        ends.add(new Point(x, y));
        all.add(new Point(x, y));
    }
}
