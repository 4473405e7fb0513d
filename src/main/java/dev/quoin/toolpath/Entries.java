package dev.quoin.toolpath;

import java.util.List;

/** All points at which pieces may be entered: the start and the end of each of their ways. */
final class Entries {
    private final int[] pieces;
    private final int[] ways;
    private final boolean[] ends;
    private final int[] firsts;
    private final PointGrid grid;
    private final int[] nearest = new int[1];

    Entries(List<Piece> all) {
        firsts = new int[all.size() + 1];
        for (int p = 0; p < all.size(); p++) {
            firsts[p + 1] = firsts[p] + 2 * all.get(p).ways();
        }
        int count = firsts[all.size()];
        pieces = new int[count];
        ways = new int[count];
        ends = new boolean[count];
        double[] x = new double[count];
        double[] y = new double[count];
        for (int p = 0; p < all.size(); p++) {
            Piece piece = all.get(p);
            for (int i = firsts[p]; i < firsts[p + 1]; i++) {
                pieces[i] = p;
                ways[i] = (i - firsts[p]) / 2;
                ends[i] = (i - firsts[p]) % 2 == 1;
                x[i] = ends[i] ? piece.endX(ways[i]) : piece.startX(ways[i]);
                y[i] = ends[i] ? piece.endY(ways[i]) : piece.startY(ways[i]);
            }
        }
        grid = new PointGrid(x, y);
    }

    /** The entry nearest to a place; its piece is not found again. There must be one left. */
    int takeNearest(double x, double y) {
        grid.nearest(x, y, nearest);
        int piece = pieces[nearest[0]];
        for (int i = firsts[piece]; i < firsts[piece + 1]; i++) {
            grid.remove(i);
        }
        return nearest[0];
    }

    int piece(int entry) {
        return pieces[entry];
    }

    int way(int entry) {
        return ways[entry];
    }

    /** Whether the piece is gone through backwards from here. */
    boolean isEnd(int entry) {
        return ends[entry];
    }
}
