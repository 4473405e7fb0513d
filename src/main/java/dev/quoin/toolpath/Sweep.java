package dev.quoin.toolpath;

import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Polyline;
import java.util.Arrays;

/**
 * Goes over the lines of a grid from the lowest that an area reaches to the highest, and keeps the edges that cross the line
 * in the order in which they do: from one line to the next this hardly changes.
 */
final class Sweep {
    /** Crossings are sorted by insertion, unless that moves each further than this. */
    private static final int NEAR = 16;

    private final Crossings edges;
    /** The bits of the winding number that count. */
    private final int counted;
    /** For each line, the first run that begins there, and for each run, another; by their numbers and 1 more, 0 for none. */
    private final int[] firstRuns;

    private final int[] otherRuns;

    /** The edges that cross the line, and where they do. */
    private final int[] active;

    private final double[] crossings;
    private int count;

    private Sweep(Crossings edges, FillRule rule) {
        this.edges = edges;
        this.counted = rule == FillRule.EVEN_ODD ? 1 : -1;
        this.firstRuns = new int[edges.lines()];
        this.otherRuns = new int[edges.runs()];
        this.active = new int[edges.runs()];
        this.crossings = new double[edges.runs()];
        for (int run = edges.runs() - 1; run >= 0; run--) {
            int line = edges.bottomLine(run) - edges.lowest();
            otherRuns[run] = firstRuns[line];
            firstRuns[line] = run + 1;
        }
    }

    /** A sweep over an area; open chains count as closed. */
    static Sweep of(Cover cover, Grid grid) {
        int points = 0;
        for (Polyline chain : cover.outline()) {
            points += chain.size();
        }
        Crossings edges = new Crossings(points);
        for (Polyline chain : cover.outline()) {
            int last = chain.size() - 1;
            edges.from(grid.u(chain.x(last), chain.y(last)), grid.line(chain.x(last), chain.y(last)));
            for (int i = 0; i <= last; i++) {
                edges.add(grid.u(chain.x(i), chain.y(i)), grid.line(chain.x(i), chain.y(i)));
            }
        }
        return new Sweep(edges, cover.rule());
    }

    /** The first line that the area reaches. */
    int lowest() {
        return edges.lowest();
    }

    /** The number of lines that it reaches. */
    int lines() {
        return edges.lines();
    }

    /** No line has more crossings than this. */
    int mostCrossings() {
        return active.length;
    }

    /** All lines together have no more spans than this. */
    int mostSpans() {
        return edges.total() / 2;
    }

    /**
     * Puts the spans of the next line into {@code u} behind others.
     *
     * @param line one after another; first one not above {@link #lowest}. One that the area does not reach has no spans
     * @return where they end
     */
    int spans(int line, double[] u, int from) {
        int at = line - edges.lowest();
        if (at < 0 || at >= edges.lines()) {
            return from;
        }
        for (int run = firstRuns[at]; run > 0; run = otherRuns[run - 1]) {
            active[count++] = edges.bottom(run - 1);
        }
        cross(line);
        return pair(u, from);
    }

    /** Crosses the active edges with a line, those that end below it replaced by the next of their runs. */
    private void cross(int line) {
        int kept = 0;
        int unsorted = 0;
        double before = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            int edge = active[i];
            if (edges.isBelow(edge, line)) {
                edge = edges.above(edge);
                if (edge == Crossings.NONE) {
                    continue;
                }
            }
            double u = edges.u(edge, line);
            if (u < before && unsorted == 0) {
                unsorted = kept;
            }
            before = u;
            active[kept] = edge;
            crossings[kept] = u;
            kept++;
        }
        count = kept;
        if (unsorted > 0) {
            sortFrom(unsorted);
        }
    }

    /** Sorts the crossings, those before {@code from} being sorted. */
    private void sortFrom(int from) {
        int moves = NEAR * count;
        for (int i = from; i < count; i++) {
            int edge = active[i];
            double u = crossings[i];
            int at = i;
            while (at > 0 && crossings[at - 1] > u) {
                active[at] = active[at - 1];
                crossings[at] = crossings[at - 1];
                at--;
            }
            active[at] = edge;
            crossings[at] = u;
            moves -= i - at;
            if (moves < 0) {
                // The edges stay as they are, to be sorted further at the next line.
                Arrays.sort(crossings, 0, count);
                return;
            }
        }
    }

    /** Those of the sorted crossings between inside and outside. */
    private int pair(double[] u, int from) {
        int to = from;
        int winding = 0;
        double start = 0;
        for (int i = 0; i < count; i++) {
            double at = crossings[i];
            boolean wasInside = (winding & counted) != 0;
            winding += Crossings.direction(at);
            boolean inside = (winding & counted) != 0;
            if (inside && !wasInside) {
                start = at;
            } else if (wasInside && !inside && at - start > Spans.TOUCH) {
                if (to > from && start - u[to - 1] <= Spans.TOUCH) {
                    u[to - 1] = at;
                } else {
                    u[to++] = start;
                    u[to++] = at;
                }
            }
        }
        return to;
    }
}
