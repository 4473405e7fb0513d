package dev.quoin.toolpath;

/**
 * The edges of an area that cross lines of a grid, gathered chain by chain. An edge crosses line k if {@code k} lies in the
 * half-open range between its ends, so that a corner on a line counts once. Edges that lead on upwards, or on downwards,
 * make a run, linked from its lowest edge up. An edge is told by twice its number, and one more if it leads upwards.
 */
final class Crossings {
    /** Stands for no edge. */
    static final int NONE = -1;

    /** For each edge, so many numbers: where it starts, u and line, and how far it leads along from line to line. */
    private static final int FIELDS = 3;

    private final double[] edges;
    /** For each edge, the first line above it. */
    private final int[] tops;
    /** For each edge, the next one of its run. */
    private final int[] above;
    /** For each run, its lowest edge and the first line that this crosses. */
    private final int[] runs;

    private int edgeCount;
    private int runCount;
    private long total;
    private int lowest = Integer.MAX_VALUE;
    /** The line after the last that is crossed. */
    private int highest = Integer.MIN_VALUE;

    private double atU;
    private double atLine;
    /** The first line that is not below {@code atLine}. */
    private int atFirst;
    /** The edge before in the chain. */
    private int last = NONE;

    /** @param most edges */
    Crossings(int most) {
        edges = new double[FIELDS * most];
        tops = new int[most];
        above = new int[most];
        runs = new int[2 * most];
    }

    /** The next edge starts at (u, line). */
    void from(double u, double line) {
        atU = u;
        atLine = line;
        atFirst = (int) Math.ceil(line);
        last = NONE;
    }

    /** Adds an edge from where the last one ended to (u, line). */
    void add(double u, double line) {
        int first = (int) Math.ceil(line);
        if (first > atFirst) {
            add(2 * edgeCount + 1, atFirst, first, u, line);
        } else if (first < atFirst) {
            add(2 * edgeCount, first, atFirst, u, line);
        }
        atU = u;
        atLine = line;
        atFirst = first;
    }

    private void add(int edge, int from, int to, double u, double line) {
        int at = FIELDS * edgeCount;
        edges[at] = atU;
        edges[at + 1] = atLine;
        edges[at + 2] = (u - atU) / (line - atLine);
        tops[edgeCount] = to;
        link(edge, from);
        edgeCount++;
        last = edge;
        total += to - from;
        lowest = Math.min(lowest, from);
        highest = Math.max(highest, to);
    }

    /** Links an edge to the one before it, if both lead the same way, or begins a run with it. */
    private void link(int edge, int from) {
        above[edgeCount] = NONE;
        if (last == NONE || (last ^ edge) % 2 != 0) {
            runs[runCount++] = edge;
            runs[runCount++] = from;
        } else if (edge % 2 == 1) {
            above[edgeCount - 1] = edge;
        } else {
            above[edgeCount] = last;
            runs[runCount - 2] = edge;
            runs[runCount - 1] = from;
        }
    }

    /** The first line that is crossed; any if none is. */
    int lowest() {
        return lowest;
    }

    /** The number of lines from the first that is crossed to the last. */
    int lines() {
        return edgeCount == 0 ? 0 : Math.subtractExact(highest, lowest);
    }

    /** The number of all crossings. */
    int total() {
        return Math.toIntExact(total);
    }

    int runs() {
        return runCount / 2;
    }

    /** The lowest edge of a run. */
    int bottom(int run) {
        return runs[2 * run];
    }

    /** The first line that a run crosses. */
    int bottomLine(int run) {
        return runs[2 * run + 1];
    }

    /** Whether an edge lies below a line, and no longer crosses it. */
    boolean isBelow(int edge, int line) {
        return tops[edge >> 1] == line;
    }

    /** The next edge of its run, or {@link #NONE}. */
    int above(int edge) {
        return above[edge >> 1];
    }

    /**
     * Where an edge crosses a line. Its direction rides in the number's last bit, less than the rounding of the crossing
     * itself.
     */
    double u(int edge, int line) {
        int at = FIELDS * (edge >> 1);
        double u = edges[at] + (line - edges[at + 1]) * edges[at + 2];
        return Double.longBitsToDouble((Double.doubleToRawLongBits(u) & ~1L) | (edge & 1));
    }

    /** Whether the edge that crosses there leads upwards, 1, or downwards, -1. */
    static int direction(double u) {
        return (Double.doubleToRawLongBits(u) & 1) == 1 ? 1 : -1;
    }
}
