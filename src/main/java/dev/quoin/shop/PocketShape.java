package dev.quoin.shop;

import dev.quoin.geometry.Path;
import java.awt.geom.Ellipse2D;
import java.awt.geom.RoundRectangle2D;

/**
 * The shape of the pockets of a jig that is made from numbers, mm.
 *
 * @param round whether it is an ellipse, else a rectangle
 * @param corner the radius of a rectangle's corners; 0 for sharp ones
 */
public record PocketShape(boolean round, double width, double height, double corner) {
    /** The shape grown by so much on each side. */
    public PocketShape grown(double by) {
        return new PocketShape(round, width + 2 * by, height + 2 * by, corner > 0 ? corner + by : 0);
    }

    /** Its outline around the origin. */
    public Path outline() {
        if (round) {
            return Path.of(new Ellipse2D.Double(-width / 2, -height / 2, width, height));
        }
        return corner == 0
                ? Path.of(dev.quoin.geometry.Box.centred(width, height))
                : Path.of(new RoundRectangle2D.Double(-width / 2, -height / 2, width, height, 2 * corner, 2 * corner));
    }

    /** How far a point lies from the shape, or from its box if it has corners; 0 inside; mm. */
    double distance(double x, double y) {
        if (round && width == height) {
            return Math.max(0, Math.hypot(x, y) - width / 2);
        }
        return Math.hypot(Math.max(0, Math.abs(x) - width / 2), Math.max(0, Math.abs(y) - height / 2));
    }
}
