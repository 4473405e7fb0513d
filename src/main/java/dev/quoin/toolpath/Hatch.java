package dev.quoin.toolpath;

import java.util.List;

/**
 * What several areas cover together, line by line of a grid from the lowest up: of each line the stretches inside, as pairs
 * of u, rising, none empty, none touching the next.
 */
final class Hatch {
    private final Grid grid;
    private final Sweep[] sweeps;
    private final int mostSpans;
    private final double[] u;
    private int size;
    private int line;
    private int linesLeft;

    Hatch(List<Cover> covers, Grid grid) {
        this.grid = grid;
        sweeps = covers.stream()
                .map(cover -> Sweep.of(cover, grid))
                .filter(sweep -> sweep.lines() > 0)
                .toArray(Sweep[]::new);
        int lowest = Integer.MAX_VALUE;
        int end = Integer.MIN_VALUE;
        int crossings = 0;
        int spans = 0;
        for (Sweep sweep : sweeps) {
            lowest = Math.min(lowest, sweep.lowest());
            end = Math.max(end, sweep.lowest() + sweep.lines());
            crossings += sweep.mostCrossings();
            spans = Math.addExact(spans, sweep.mostSpans());
        }
        line = lowest - 1;
        linesLeft = sweeps.length == 0 ? 0 : Math.subtractExact(end, lowest);
        u = new double[crossings];
        mostSpans = spans;
    }

    Grid grid() {
        return grid;
    }

    /** There are no more spans than this. */
    int mostSpans() {
        return mostSpans;
    }

    /** The number of lines that are left. */
    int linesLeft() {
        return linesLeft;
    }

    /** Goes on to the next line, which may have no span; false if there is none. */
    boolean next() {
        if (linesLeft == 0) {
            return false;
        }
        linesLeft--;
        line++;
        size = 0;
        int areas = 0;
        for (Sweep sweep : sweeps) {
            int before = size;
            size = sweep.spans(line, u, size);
            areas += size > before ? 1 : 0;
        }
        if (areas > 1) {
            join();
        }
        return true;
    }

    /** The number of the line. */
    int line() {
        return line;
    }

    /** How many numbers its spans take. */
    int size() {
        return size;
    }

    /** An end of a span. */
    double u(int at) {
        return u[at];
    }

    /** Sorts the spans by their starts, and joins those that touch. */
    private void join() {
        sort();
        int to = 0;
        for (int i = 0; i < size; i += 2) {
            if (to > 0 && u[i] - u[to - 1] <= Spans.TOUCH) {
                u[to - 1] = Math.max(u[to - 1], u[i + 1]);
            } else {
                u[to++] = u[i];
                u[to++] = u[i + 1];
            }
        }
        size = to;
    }

    /** By insertion: the spans of each area are sorted already, and areas seldom overlap. */
    private void sort() {
        for (int i = 2; i < size; i += 2) {
            double start = u[i];
            double end = u[i + 1];
            int j = i - 2;
            while (j >= 0 && u[j] > start) {
                u[j + 2] = u[j];
                u[j + 3] = u[j + 1];
                j -= 2;
            }
            u[j + 2] = start;
            u[j + 3] = end;
        }
    }
}
