package dev.quoin.lettering;

import dev.quoin.drawing.TextAnchor;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * The convex hull of a line's ink, at a font size of 1. A line lies in a convex space exactly if its hull does; in a
 * space with a notch, the gaps between letters are not made use of.
 */
final class InkHull {
    /** How far curves may leave the lines that stand for them, ems. */
    private static final double FLATNESS = 1e-4;

    private final double[] xy;
    /** Of each edge: its outward unit normal, and how far the hull reaches along it. */
    private final double[] normals;

    /** From its corners, anticlockwise: outside is on the right of each edge. */
    private InkHull(Coordinate[] corners) {
        int count = corners.length;
        xy = new double[2 * count];
        normals = new double[count == 1 ? 0 : 3 * count];
        for (int i = 0; i < count; i++) {
            Coordinate from = corners[i];
            Coordinate to = corners[(i + 1) % count];
            xy[2 * i] = from.x;
            xy[2 * i + 1] = from.y;
            if (count > 1) {
                double length = from.distance(to);
                normals[3 * i] = (to.y - from.y) / length;
                normals[3 * i + 1] = (from.x - to.x) / length;
                normals[3 * i + 2] = normals[3 * i] * from.x + normals[3 * i + 1] * from.y;
            }
        }
    }

    /** The hulls of a block's lines that show ink. */
    static List<InkHull> of(TextBlock block, TextAnchor anchor, double squeeze) {
        List<InkHull> hulls = new ArrayList<>();
        for (int i = 0; i < block.lines().size(); i++) {
            Path outline = block.lines().get(i).outline();
            if (!outline.isEmpty()) {
                hulls.add(new InkHull(corners(outline, block.place(i, anchor, squeeze))));
            }
        }
        return hulls;
    }

    private static Coordinate[] corners(Path outline, Affine place) {
        List<Coordinate> points = new ArrayList<>();
        for (Polyline line : outline.flatten(FLATNESS)) {
            for (int i = 0; i < line.size(); i++) {
                points.add(new Coordinate(place.x(line.x(i), line.y(i)), place.y(line.x(i), line.y(i))));
            }
        }
        Geometry hull = new ConvexHull(points.toArray(Coordinate[]::new), new GeometryFactory()).getConvexHull();
        // A straight stroke has a hull of two corners, a dot one of one; JTS repeats the first corner of the others.
        Coordinate[] corners = hull.getDimension() < 2
                ? hull.getCoordinates()
                : Arrays.copyOf(hull.getCoordinates(), hull.getNumPoints() - 1);
        if (hull.getDimension() == 2 && !Orientation.isCCW(hull.getCoordinates())) {
            Collections.reverse(Arrays.asList(corners));
        }
        return corners;
    }

    /** A point inside: the mean of its corners, ems. */
    Coordinate middle() {
        Coordinate middle = new Coordinate(0, 0);
        for (int i = 0; i < xy.length; i += 2) {
            middle.x += xy[i] * 2 / xy.length;
            middle.y += xy[i + 1] * 2 / xy.length;
        }
        return middle;
    }

    /** How far it reaches in a direction, ems. */
    double reach(double nx, double ny) {
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < xy.length; i += 2) {
            most = Math.max(most, nx * xy[i] + ny * xy[i + 1]);
        }
        return most;
    }

    /**
     * The line that parts this hull, at a size and place, from an edge with the widest gap. Two convex shapes in the plane
     * are apart exactly if they are so along a normal of one of their edges (separating axis theorem).
     *
     * @param edge x0, y0, x1, y1, mm
     * @param at size, x, y
     */
    Parting part(double[] edge, double[] at) {
        Parting best = partAlong(edge, at);
        int widest = -1;
        double gap = best.gap;
        for (int i = 0; i < normals.length; i += 3) {
            double here = beginning(edge, normals[i], normals[i + 1])
                    - at[0] * normals[i + 2]
                    - normals[i] * at[1]
                    - normals[i + 1] * at[2];
            if (here > gap) {
                gap = here;
                widest = i;
            }
        }
        if (widest < 0) {
            return best;
        }
        double nx = normals[widest];
        double ny = normals[widest + 1];
        return new Parting(nx, ny, normals[widest + 2], beginning(edge, nx, ny), gap);
    }

    /** The same, by a line along the edge itself; in a convex space the best there is. */
    Parting partAlong(double[] edge, double[] at) {
        double ex = edge[2] - edge[0];
        double ey = edge[3] - edge[1];
        double length = Math.hypot(ex, ey);
        Parting right = along(edge, at, ey / length, -ex / length);
        Parting left = along(edge, at, -ey / length, ex / length);
        return left.gap > right.gap ? left : right;
    }

    private Parting along(double[] edge, double[] at, double nx, double ny) {
        double reach = reach(nx, ny);
        double c = beginning(edge, nx, ny);
        return new Parting(nx, ny, reach, c, c - at[0] * reach - nx * at[1] - ny * at[2]);
    }

    private static double beginning(double[] edge, double nx, double ny) {
        return Math.min(nx * edge[0] + ny * edge[1], nx * edge[2] + ny * edge[3]);
    }

    /**
     * A line between a hull and an edge: the hull lies before it, the edge behind.
     *
     * @param nx of its unit normal, from the hull to the edge
     * @param ny of the same
     * @param reach of the hull along the normal, ems
     * @param c where the edge begins along the normal, mm
     * @param gap between the two, mm; below zero if they overlap
     */
    record Parting(double nx, double ny, double reach, double c, double gap) {}
}
