package dev.quoin.toolpath;

import dev.quoin.geometry.Path;
import dev.quoin.geometry.Point;
import java.util.Arrays;

/**
 * Movements of the beam with the laser on, in the order in which they are made, held in two arrays. Coordinates in mm
 * around the item's centre, axes parallel to the field (x right, y up). A stroke that ends on the very point where it
 * starts, after two lines or more, is closed. A stroke of one point is a dot. Immutable.
 */
public final class Strokes {
    public static final Strokes EMPTY = new Strokes(new double[0], new int[0], true);

    private final double[] xy;
    private final int[] ends;
    /** Made of two points each: hatches are, and millions of lines need not be looked at again. */
    private final boolean lines;

    private Strokes(double[] xy, int[] ends, boolean lines) {
        this.xy = xy;
        this.ends = ends;
        this.lines = lines;
    }

    /**
     * Straight strokes.
     *
     * @param xy the starts and ends of each in turn; not copied, so it must never change
     */
    static Strokes ofLines(double[] xy) {
        int[] ends = new int[xy.length / 4];
        for (int i = 0; i < ends.length; i++) {
            ends[i] = 2 * (i + 1);
        }
        return new Strokes(xy, ends, true);
    }

    /** The number of strokes. */
    public int count() {
        return ends.length;
    }

    public boolean isEmpty() {
        return ends.length == 0;
    }

    /** The number of the first point of a stroke. */
    public int start(int stroke) {
        return stroke == 0 ? 0 : ends[stroke - 1];
    }

    /** The number after that of the last point of a stroke. */
    public int end(int stroke) {
        return ends[stroke];
    }

    public double x(int point) {
        return xy[2 * point];
    }

    public double y(int point) {
        return xy[2 * point + 1];
    }

    /** Whether a stroke comes back to its start, so that it has a corner there. */
    public boolean isClosed(int stroke) {
        int first = start(stroke);
        int last = end(stroke) - 1;
        return last - first > 1 && x(first) == x(last) && y(first) == y(last);
    }

    /**
     * Where the first stroke starts.
     *
     * @throws IndexOutOfBoundsException if there is none
     */
    public Point first() {
        return new Point(xy[0], xy[1]);
    }

    /**
     * Where the last stroke ends.
     *
     * @throws IndexOutOfBoundsException if there is none
     */
    public Point last() {
        return new Point(xy[xy.length - 2], xy[xy.length - 1]);
    }

    /** The length of a stroke, mm. */
    public double length(int stroke) {
        double sum = 0;
        for (int p = start(stroke) + 1; p < end(stroke); p++) {
            sum += distance(p - 1, p);
        }
        return sum;
    }

    /** The length of all strokes, mm. */
    public double length() {
        double sum = 0;
        for (int i = 0; i < ends.length; i++) {
            sum += length(i);
        }
        return sum;
    }

    /** The turns of a stroke at its corners, the one where a closed stroke comes back included; degrees, each 0 to 180. */
    public double turning(int stroke) {
        int first = start(stroke);
        int last = end(stroke) - 1;
        double sum = 0;
        for (int p = first + 1; p < last; p++) {
            sum += turn(p - 1, p, p + 1);
        }
        return isClosed(stroke) ? sum + turn(last - 1, first, first + 1) : sum;
    }

    /** The strokes as pieces of a path, in the same order and directions; a dot as a line of no length. */
    public Path toPath() {
        if (lines) {
            return Path.ofLines(xy);
        }
        Path.Builder path = Path.builder(xy.length / 2, xy.length / 2);
        for (int i = 0; i < ends.length; i++) {
            int first = start(i);
            int last = end(i) - 1;
            path.moveTo(x(first), y(first));
            for (int p = first + 1; p < last; p++) {
                path.lineTo(x(p), y(p));
            }
            if (isClosed(i)) {
                path.close();
            } else {
                path.lineTo(x(last), y(last));
            }
        }
        return path.build();
    }

    /** The distance from the end of a stroke to the start of the next, mm. */
    double gap(int stroke) {
        return distance(ends[stroke] - 1, ends[stroke]);
    }

    private double distance(int p, int q) {
        double dx = xy[2 * q] - xy[2 * p];
        double dy = xy[2 * q + 1] - xy[2 * p + 1];
        return Math.sqrt(dx * dx + dy * dy);
    }

    private double turn(int before, int at, int after) {
        double inX = x(at) - x(before);
        double inY = y(at) - y(before);
        double outX = x(after) - x(at);
        double outY = y(after) - y(at);
        double cross = inX * outY - inY * outX;
        return Math.toDegrees(Math.atan2(Math.abs(cross), inX * outX + inY * outY));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Strokes strokes && Arrays.equals(xy, strokes.xy) && Arrays.equals(ends, strokes.ends);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(xy) + Arrays.hashCode(ends);
    }

    @Override
    public String toString() {
        return "Strokes[" + count() + "]";
    }

    /** Collects strokes. */
    static final class Builder {
        private double[] xy = new double[64];
        private int[] ends = new int[16];
        private int coordinates;
        private int count;

        /** Makes room for so many more straight strokes. */
        Builder reserve(int lines) {
            if (coordinates == 0) {
                xy = new double[4 * lines];
                ends = new int[lines];
            }
            if (coordinates + 4 * lines > xy.length) {
                xy = Arrays.copyOf(xy, Math.max(2 * xy.length, coordinates + 4 * lines));
            }
            if (count + lines > ends.length) {
                ends = Arrays.copyOf(ends, Math.max(2 * ends.length, count + lines));
            }
            return this;
        }

        /** Adds a point to the stroke under way. */
        Builder point(double x, double y) {
            if (coordinates == xy.length) {
                xy = Arrays.copyOf(xy, Math.max(64, 2 * coordinates));
            }
            xy[coordinates++] = x;
            xy[coordinates++] = y;
            return this;
        }

        /** Ends the stroke under way. */
        Builder end() {
            if (count == ends.length) {
                ends = Arrays.copyOf(ends, Math.max(16, 2 * count));
            }
            ends[count++] = coordinates / 2;
            return this;
        }

        Strokes build() {
            if (count == 0) {
                return EMPTY;
            }
            // Full arrays are replaced, never changed, when more is added.
            return new Strokes(
                    coordinates == xy.length ? xy : Arrays.copyOf(xy, coordinates),
                    count == ends.length ? ends : Arrays.copyOf(ends, count),
                    false);
        }
    }
}
