package dev.quoin.toolpath;

import java.util.Arrays;

/** For each end of a tour's pieces, the nearest ends of other pieces. */
final class Neighbours {
    private static final int KEPT = 12;

    private Neighbours() {}

    /**
     * @param x of the ends, mm
     * @param y of the ends, mm
     * @param ends how many of them lie somewhere; those after are no neighbours and have none
     */
    static int[][] of(double[] x, double[] y, int ends) {
        PointGrid grid = new PointGrid(Arrays.copyOf(x, ends), Arrays.copyOf(y, ends));
        int[] found = new int[Math.min(KEPT + 2, ends)];
        int[][] near = new int[x.length][];
        Arrays.fill(near, new int[0]);
        for (int end = 0; end < ends; end++) {
            int count = grid.nearest(x[end], y[end], found);
            near[end] = others(found, count, end >> 1);
        }
        return near;
    }

    private static int[] others(int[] found, int count, int piece) {
        int[] kept = new int[count];
        int n = 0;
        for (int i = 0; i < count; i++) {
            if (found[i] >> 1 != piece) {
                kept[n++] = found[i];
            }
        }
        return Arrays.copyOf(kept, n);
    }
}
