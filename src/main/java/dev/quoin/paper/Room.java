package dev.quoin.paper;

import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import java.util.List;

/** How much room an outline leaves around its centre for upright lines of text. */
final class Room {
    private static final double TOLERANCE = 0.05;

    private final List<Polyline> edges;

    Room(Path outline) {
        edges = outline.flatten(TOLERANCE);
    }

    /** The width that is free, the same to both sides of x = 0, everywhere from y = {@code low} to {@code high}; mm. */
    double widthBetween(double low, double high) {
        double half = Double.POSITIVE_INFINITY;
        for (double y : new double[] {low, (low + high) / 2, high}) {
            half = Math.min(half, halfWidthAt(y));
        }
        return Double.isInfinite(half) ? 0 : 2 * half;
    }

    /** How far the nearest edge is from (0, y) along the line at y; 0 where no edge crosses it on both sides. */
    private double halfWidthAt(double y) {
        double left = Double.NEGATIVE_INFINITY;
        double right = Double.POSITIVE_INFINITY;
        for (Polyline edge : edges) {
            for (int i = 0, j = edge.size() - 1; i < edge.size(); j = i++) {
                if ((edge.y(i) > y) != (edge.y(j) > y)) {
                    double x = edge.x(i) + (edge.x(j) - edge.x(i)) * (y - edge.y(i)) / (edge.y(j) - edge.y(i));
                    left = x <= 0 ? Math.max(left, x) : left;
                    right = x >= 0 ? Math.min(right, x) : right;
                }
            }
        }
        return Double.isInfinite(left) || Double.isInfinite(right) ? 0 : Math.min(-left, right);
    }
}
