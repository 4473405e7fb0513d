package dev.quoin.toolpath;

import java.util.Arrays;

/** Points in square cells, a few in each, to find those near a place; points can be taken out. */
final class PointGrid {
    private static final double POINTS_A_CELL = 2;

    private final double[] x;
    private final double[] y;
    private final boolean[] gone;
    private final double minX;
    private final double minY;
    private final double cell;
    private final int columns;
    private final int rows;
    /** The points of cell c are {@code points[starts[c]]} to {@code points[ends[c] - 1]}. */
    private final int[] starts;

    private final int[] ends;
    private final int[] points;

    /** The last answer: the nearest found so far and the squares of their distances. */
    private int found;

    private double[] squares = new double[1];

    PointGrid(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        this.gone = new boolean[x.length];
        this.minX = Arrays.stream(x).min().orElse(0);
        this.minY = Arrays.stream(y).min().orElse(0);
        double width = Arrays.stream(x).max().orElse(0) - minX;
        double height = Arrays.stream(y).max().orElse(0) - minY;
        // Long thin clouds get cells by their length, so that there are never many more cells than points.
        double fair = Math.sqrt(width * height * POINTS_A_CELL / Math.max(1, x.length));
        double least = Math.max(width, height) * POINTS_A_CELL / Math.max(1, x.length);
        this.cell = Math.max(Math.max(fair, least), 1e-9);
        this.columns = (int) (width / cell) + 1;
        this.rows = (int) (height / cell) + 1;
        this.starts = new int[columns * rows + 1];
        this.points = new int[x.length];
        this.ends = lay();
    }

    private int[] lay() {
        for (int i = 0; i < x.length; i++) {
            starts[cellOf(i) + 1]++;
        }
        for (int c = 0; c < columns * rows; c++) {
            starts[c + 1] += starts[c];
        }
        int[] next = Arrays.copyOf(starts, columns * rows);
        for (int i = 0; i < x.length; i++) {
            points[next[cellOf(i)]++] = i;
        }
        return next;
    }

    void remove(int point) {
        gone[point] = true;
    }

    /**
     * Finds the points nearest to a place, nearest first; of two at the same distance, whichever was met first.
     *
     * @param into takes their numbers
     * @return how many were found: as many as {@code into} holds, or all there are
     */
    int nearest(double px, double py, int[] into) {
        found = 0;
        if (squares.length < into.length) {
            squares = new double[into.length];
        }
        int column = clamp((px - minX) / cell, columns);
        int row = clamp((py - minY) / cell, rows);
        int rings = Math.max(Math.max(column, columns - 1 - column), Math.max(row, rows - 1 - row));
        for (int ring = 0; ring <= rings; ring++) {
            searchRing(column, row, ring, px, py, into);
            double covered = ring * cell;
            if (found == into.length && squares[found - 1] <= covered * covered) {
                break;
            }
        }
        return found;
    }

    private void searchRing(int column, int row, int ring, double px, double py, int[] into) {
        for (int r = Math.max(0, row - ring); r <= Math.min(rows - 1, row + ring); r++) {
            boolean whole = Math.abs(r - row) == ring;
            int step = whole || ring == 0 ? 1 : 2 * ring;
            for (int c = column - ring; c <= column + ring; c += step) {
                if (c >= 0 && c < columns) {
                    searchCell(r * columns + c, px, py, into);
                }
            }
        }
    }

    private void searchCell(int c, double px, double py, int[] into) {
        for (int i = starts[c]; i < ends[c]; i++) {
            int point = points[i];
            if (gone[point]) {
                points[i--] = points[--ends[c]];
                continue;
            }
            double dx = x[point] - px;
            double dy = y[point] - py;
            offer(point, dx * dx + dy * dy, into);
        }
    }

    private void offer(int point, double square, int[] into) {
        if (found == into.length && square >= squares[found - 1]) {
            return;
        }
        int at = found < into.length ? found++ : found - 1;
        while (at > 0 && squares[at - 1] > square) {
            squares[at] = squares[at - 1];
            into[at] = into[at - 1];
            at--;
        }
        squares[at] = square;
        into[at] = point;
    }

    private int cellOf(int i) {
        return clamp((y[i] - minY) / cell, rows) * columns + clamp((x[i] - minX) / cell, columns);
    }

    private static int clamp(double value, int count) {
        return (int) Math.max(0, Math.min(count - 1, Math.floor(value)));
    }
}
