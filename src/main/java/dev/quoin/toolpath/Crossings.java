package dev.quoin.toolpath;

import dev.quoin.geometry.FillRule;
import java.util.Arrays;

/**
 * Where edges cross the lines of a grid. An edge crosses line k if {@code k} lies in the half-open range between its ends,
 * so that a corner on a line counts once. Edges are gathered first, chain by chain; then the crossings are counted, laid into
 * one array line by line, sorted within each line, and turned into spans in place.
 */
final class Crossings {
    /** Spans that are nearer than this touch; what is shorter is none. mm. */
    static final double TOUCH = 1e-9;

    /** Crossings are laid out nearly in order: they are sorted by insertion, unless that moves each further than this. */
    private static final int NEAR = 16;

    private double[] edges = new double[256];
    /** For each edge, the first line that it crosses, and the one after the last. */
    private int[] ranges = new int[128];

    private int size;
    private double atU;
    private double atLine;
    /** The first line that is not below {@code atLine}. */
    private int atFirst;

    private int lowest = Integer.MAX_VALUE;
    private int highest = Integer.MIN_VALUE;

    /** The next edge starts at (u, line). */
    void from(double u, double line) {
        atU = u;
        atLine = line;
        atFirst = (int) Math.ceil(line);
    }

    /** Adds an edge from where the last one ended to (u, line). */
    void add(double u, double line) {
        double u0 = atU;
        double line0 = atLine;
        int first = atFirst;
        from(u, line);
        if (first != atFirst) {
            add(u0, line0, Math.min(first, atFirst), Math.max(first, atFirst));
        }
    }

    private void add(double u0, double line0, int from, int to) {
        lowest = Math.min(lowest, from);
        highest = Math.max(highest, to);
        if (size == edges.length) {
            edges = Arrays.copyOf(edges, 2 * size);
            ranges = Arrays.copyOf(ranges, size);
        }
        ranges[size / 2] = from;
        ranges[size / 2 + 1] = to;
        edges[size] = u0;
        edges[size + 1] = line0;
        edges[size + 2] = atU;
        edges[size + 3] = atLine;
        size += 4;
    }

    Spans spans(Grid grid, FillRule rule) {
        if (size == 0) {
            return new Spans(grid, 0, new int[1], new double[0]);
        }
        int[] starts = count();
        double[] u = lay(starts);
        for (int i = 0; i + 1 < starts.length; i++) {
            sort(u, starts[i], starts[i + 1]);
        }
        pair(u, starts, rule);
        return new Spans(grid, lowest, starts, u);
    }

    /** For each line, the sum of the crossings before it. */
    private int[] count() {
        int lines = highest - lowest;
        int[] starts = new int[lines + 1];
        for (int e = 0; e < size / 2; e += 2) {
            starts[ranges[e] - lowest]++;
            starts[ranges[e + 1] - lowest]--;
        }
        int open = 0;
        int sum = 0;
        for (int i = 0; i <= lines; i++) {
            open += starts[i];
            starts[i] = sum;
            sum = Math.addExact(sum, open);
        }
        return starts;
    }

    private double[] lay(int[] starts) {
        int[] next = starts.clone();
        double[] u = new double[starts[starts.length - 1]];
        for (int edge : leftToRight()) {
            int e = 4 * edge;
            double slope = (edges[e + 2] - edges[e]) / (edges[e + 3] - edges[e + 1]);
            long upwards = edges[e + 3] > edges[e + 1] ? 1 : 0;
            double start = edges[e];
            double line = edges[e + 1];
            int to = ranges[e / 2 + 1];
            for (int k = ranges[e / 2]; k < to; k++) {
                u[next[k - lowest]++] = marked(start + (k - line) * slope, upwards);
            }
        }
        return u;
    }

    /** The edges, nearly sorted by their middles: laid out in this order, each line's crossings are nearly sorted too. */
    private int[] leftToRight() {
        int count = size / 4;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int e = 0; e < size; e += 4) {
            double middle = edges[e] + edges[e + 2];
            low = Math.min(low, middle);
            high = Math.max(high, middle);
        }
        double scale = high > low ? (count - 1) / (high - low) : 0;
        int[] bins = new int[count];
        int[] next = new int[count + 1];
        for (int i = 0; i < count; i++) {
            bins[i] = Math.min(count - 1, (int) ((edges[4 * i] + edges[4 * i + 2] - low) * scale));
            next[bins[i] + 1]++;
        }
        for (int i = 0; i < count; i++) {
            next[i + 1] += next[i];
        }
        int[] order = new int[count];
        for (int i = 0; i < count; i++) {
            order[next[bins[i]]++] = i;
        }
        return order;
    }

    /** The direction of the edge rides in the number's last bit, less than the rounding of the crossing itself. */
    private static double marked(double u, long upwards) {
        return Double.longBitsToDouble((Double.doubleToRawLongBits(u) & ~1L) | upwards);
    }

    private static int direction(double u) {
        return (Double.doubleToRawLongBits(u) & 1L) == 0 ? -1 : 1;
    }

    private static void sort(double[] u, int from, int to) {
        int moves = NEAR * (to - from);
        for (int i = from + 1; i < to; i++) {
            double value = u[i];
            int j = i - 1;
            while (j >= from && u[j] > value) {
                u[j + 1] = u[j];
                j--;
            }
            u[j + 1] = value;
            moves -= i - 1 - j;
            if (moves < 0) {
                Arrays.sort(u, from, to);
                return;
            }
        }
    }

    /** Leaves of the sorted crossings those between inside and outside, closed up; {@code starts} follows. */
    private static void pair(double[] u, int[] starts, FillRule rule) {
        int written = 0;
        int from = 0;
        for (int i = 0; i + 1 < starts.length; i++) {
            int to = starts[i + 1];
            written = pairLine(u, from, to, written, rule);
            from = to;
            starts[i + 1] = written;
        }
    }

    private static int pairLine(double[] u, int from, int to, int at, FillRule rule) {
        int written = at;
        int winding = 0;
        double start = 0;
        for (int i = from; i < to; i++) {
            boolean wasInside = winding != 0;
            winding = rule == FillRule.EVEN_ODD ? 1 - winding : winding + direction(u[i]);
            boolean inside = winding != 0;
            if (inside && !wasInside) {
                start = u[i];
            } else if (wasInside && !inside && u[i] - start > TOUCH) {
                if (written > at && start - u[written - 1] <= TOUCH) {
                    u[written - 1] = u[i];
                } else {
                    u[written++] = start;
                    u[written++] = u[i];
                }
            }
        }
        return written;
    }
}
