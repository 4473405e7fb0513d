package dev.quoin.toolpath;

/** The shortest travel through a few pieces: all orders and directions are tried, but for those already too long. */
final class ShortestTravel {
    /** More pieces than this take too long: n! 2^n ways. */
    static final int MOST_PIECES = 5;

    private final double[] x;
    private final double[] y;
    private final boolean[] done;
    private final int[] trial;
    private int[] best;
    private double least = Double.POSITIVE_INFINITY;

    private ShortestTravel(double[] x, double[] y, int pieces) {
        this.x = x;
        this.y = y;
        this.done = new boolean[pieces];
        this.trial = new int[pieces];
        this.best = trial;
    }

    /**
     * The ends at which the pieces are entered, in order. Piece p has the ends 2p and 2p + 1; the start stands after them.
     *
     * @param x of the ends, mm
     * @param y of the ends, mm
     */
    static int[] through(double[] x, double[] y, int pieces) {
        ShortestTravel search = new ShortestTravel(x, y, pieces);
        search.extend(0, 2 * pieces, 0);
        return search.best;
    }

    private void extend(int depth, int from, double length) {
        if (length >= least) {
            return;
        }
        if (depth == trial.length) {
            least = length;
            best = trial.clone();
            return;
        }
        for (int end = 0; end < 2 * trial.length; end++) {
            if (!done[end >> 1]) {
                done[end >> 1] = true;
                trial[depth] = end;
                double dx = x[end] - x[from];
                double dy = y[end] - y[from];
                extend(depth + 1, end ^ 1, length + Math.sqrt(dx * dx + dy * dy));
                done[end >> 1] = false;
            }
        }
    }
}
