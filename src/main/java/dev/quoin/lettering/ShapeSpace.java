package dev.quoin.lettering;

import dev.quoin.drawing.TextAnchor;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * Any closed shape. A block flush in the middle stands on the upright line through the middle of the shape's box; others
 * may stand anywhere. From a point inside, the block grows: for each line and each edge
 * of the shape a straight line between them is chosen, the largest size that crosses none of these is found, and this is
 * repeated from there until it grows no more. Each round keeps the ink inside. In a convex shape the first point gives
 * the largest size there is. In others several points are tried, and then places all over the shape, whether a slightly
 * larger block fits there, to grow on from; tests hold the size to within a hundredth of the largest.
 */
final class ShapeSpace implements FitSpace {
    private static final int MOST_ROUNDS = 12;
    private static final int HALVINGS = 30;
    /** Growth by less than this part is none. */
    private static final double NO_GROWTH = 1e-7;
    /** How much larger a block must be able to stand elsewhere to be tried there. */
    private static final double WORTHWHILE = 1.002;

    private static final int HEIGHTS = 60;
    private static final int COLUMNS = 12;

    private final TextAnchor anchor;
    private final VerticalAlign align;
    private final List<SpacePolygon> parts;
    private final Box bounds;

    ShapeSpace(Area area, double inset, TextAnchor anchor, VerticalAlign align) {
        this.anchor = anchor;
        this.align = align;
        this.parts = SpacePolygon.of(area, inset);
        this.bounds = area.outline().bounds().grow(-inset);
    }

    @Override
    public double largest(TextBlock block, double squeeze) {
        return grow(block, InkHull.of(block, anchor, squeeze), squeeze).at[0];
    }

    @Override
    public Point origin(TextBlock block, double squeeze, double size) {
        List<InkHull> hulls = InkHull.of(block, anchor, squeeze);
        Grown grown = grow(block, hulls, squeeze);
        Point middle = block.ink(anchor, squeeze).centre();
        // Drawn in around the middle of its ink, a smaller block stays inside the larger one.
        double slack = grown.at[0] - size;
        double[] at = {size, grown.at[1] + slack * middle.x(), grown.at[2] + slack * middle.y()};
        if (!fits(grown.part, hulls, at)) {
            at = new double[] {size, grown.at[1], grown.at[2]};
        }
        double x = preferredX();
        double y = align.baseline(bounds, block, size);
        double[] wished = {size, x, y};
        if (fits(grown.part, hulls, wished) && grown.part.contains(x + size * middle.x(), y + size * middle.y())) {
            return new Point(x, y);
        }
        for (int i = 0; i < 2; i++) {
            at = towards(grown.part, hulls, at, x, at[2]);
            at = towards(grown.part, hulls, at, at[1], y);
        }
        return new Point(at[1], at[2]);
    }

    @Override
    public boolean isRectangle() {
        return false;
    }

    private boolean centred() {
        return anchor == TextAnchor.MIDDLE;
    }

    private double preferredX() {
        return switch (anchor) {
            case START -> bounds.minX();
            case MIDDLE -> bounds.centre().x();
            case END -> bounds.maxX();
        };
    }

    private Grown grow(TextBlock block, List<InkHull> hulls, double squeeze) {
        Point middle = block.ink(anchor, squeeze).centre();
        Grown best = new Grown(null, new double[3]);
        for (SpacePolygon part : parts) {
            for (Coordinate start : centred() ? part.inside(preferredX()) : part.inside()) {
                double[] at = grow(part, hulls, start, middle);
                if (at[0] > best.at[0] * (1 + NO_GROWTH)) {
                    best = new Grown(part, at);
                }
            }
        }
        return grownElsewhere(best, hulls, middle);
    }

    /** A larger block than that which grew, somewhere else in a shape with notches; or the same. */
    private Grown grownElsewhere(Grown grown, List<InkHull> hulls, Point middle) {
        Grown best = grown;
        for (SpacePolygon part : parts) {
            for (Coordinate place : part.isConvex() ? List.<Coordinate>of() : places(part)) {
                double size = best.at[0] * WORTHWHILE;
                double[] trial = {size, place.x - size * middle.x(), place.y - size * middle.y()};
                if (size > 0 && fits(part, hulls, trial)) {
                    best = new Grown(part, grow(part, hulls, trial));
                }
            }
        }
        return best;
    }

    private List<Coordinate> places(SpacePolygon part) {
        List<Coordinate> places = new ArrayList<>();
        int columns = centred() ? 1 : COLUMNS;
        int rows = centred() ? HEIGHTS : COLUMNS;
        for (int i = 0; i < columns * rows; i++) {
            double x = bounds.minX() + (i / rows + 0.5) / columns * bounds.width();
            double y = bounds.minY() + (i % rows + 0.5) / rows * bounds.height();
            if (part.contains(x, y)) {
                places.add(new Coordinate(x, y));
            }
        }
        return places;
    }

    private double[] grow(SpacePolygon part, List<InkHull> hulls, Coordinate start, Point middle) {
        double seed = 1e-6 * Math.max(bounds.width(), bounds.height());
        double[] at = {seed, start.x - seed * middle.x(), start.y - seed * middle.y()};
        return fits(part, hulls, at) ? grow(part, hulls, at) : new double[3];
    }

    private double[] grow(SpacePolygon part, List<InkHull> hulls, double[] start) {
        double[] at = start;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double[] next = largest(part, hulls, at);
            boolean grown = next[0] > at[0] * (1 + NO_GROWTH) && fits(part, hulls, next);
            if (!grown) {
                break;
            }
            at = next;
        }
        return at;
    }

    private double[] largest(SpacePolygon part, List<InkHull> hulls, double[] at) {
        double far = 10 * (bounds.width() + bounds.height());
        LargestPlace place = new LargestPlace(far, bounds.maxX() + far, bounds.maxY() + far);
        if (centred()) {
            place.add(0, 1, 0, preferredX());
            place.add(0, -1, 0, -preferredX());
        }
        for (InkHull hull : hulls) {
            for (double[] edge : part.edges()) {
                InkHull.Parting parting = part.isConvex() ? hull.partAlong(edge, at) : hull.part(edge, at);
                place.add(parting.reach(), parting.nx(), parting.ny(), parting.c());
            }
        }
        return place.solve();
    }

    /** A line must cross no edge; where there are holes or notches, it must not lie beyond the edges either. */
    private static boolean fits(SpacePolygon part, List<InkHull> hulls, double[] at) {
        for (InkHull hull : hulls) {
            Coordinate middle = hull.middle();
            if (!part.isConvex() && !part.contains(at[1] + at[0] * middle.x, at[2] + at[0] * middle.y)) {
                return false;
            }
            for (double[] edge : part.edges()) {
                if (hull.part(edge, at).gap() < -ROUNDING) {
                    return false;
                }
            }
        }
        return true;
    }

    /** As far from a place where the block fits to another as it still fits. */
    private static double[] towards(SpacePolygon part, List<InkHull> hulls, double[] at, double x, double y) {
        double near = 0;
        double far = 1;
        double[] best = at;
        for (int i = 0; i < HALVINGS; i++) {
            double share = i == 0 ? 1 : (near + far) / 2;
            double[] trial = {at[0], at[1] + share * (x - at[1]), at[2] + share * (y - at[2])};
            if (fits(part, hulls, trial)) {
                near = share;
                best = trial;
            } else {
                far = share;
            }
            if (near == 1) {
                break;
            }
        }
        return best;
    }

    /** Size, x and y in a part of the space. */
    @SuppressWarnings("ArrayRecordComponent") // Lives no longer than a call.
    private record Grown(SpacePolygon part, double[] at) {}
}
