package dev.quoin.toolpath;

import java.util.Arrays;

/**
 * A lower bound of a round trip: the largest that subgradient steps find among the 1-trees of weighted points (M. Held, R.
 * Karp, Operations Research 18, 1970 and Mathematical Programming 1, 1971). No trip is shorter.
 */
final class OneTreeBound {
    private static final int ROUNDS = 1_000;

    private final double[] x;
    private final double[] y;
    private final int n;
    private final double[] weight;
    private final int[] degree;
    private final int[] lastDegree;

    private OneTreeBound(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        this.n = x.length;
        this.weight = new double[n];
        this.degree = new int[n];
        this.lastDegree = new int[n];
    }

    /**
     * The bound for the round trip through points.
     *
     * @param trip the length of a trip, which sets the first steps
     */
    static double of(double[] x, double[] y, double trip) {
        return new OneTreeBound(x, y).climb(trip);
    }

    private double climb(double trip) {
        double best = 0;
        double step = trip / (5 * n);
        for (int round = 0; round < ROUNDS; round++) {
            best = Math.max(best, oneTree());
            for (int i = 0; i < n; i++) {
                // The last direction counts too, which keeps the steps from turning to and fro.
                weight[i] += step * (0.7 * (degree[i] - 2) + 0.3 * (lastDegree[i] - 2));
            }
            System.arraycopy(degree, 0, lastDegree, 0, n);
            step *= 0.99;
        }
        return best;
    }

    /** The length of the least 1-tree, less twice the weights; sets the degrees. */
    private double oneTree() {
        double[] least = new double[n];
        int[] from = new int[n];
        boolean[] in = new boolean[n];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        Arrays.fill(degree, 0);
        // Point 0 is the one that is joined to the tree of all others by its two shortest edges.
        in[0] = true;
        double sum = 0;
        int added = 1;
        for (int count = 1; count < n; count++) {
            in[added] = true;
            if (count > 1) {
                sum += least[added];
                degree[added]++;
                degree[from[added]]++;
            }
            int next = -1;
            for (int i = 1; i < n; i++) {
                if (!in[i]) {
                    double length = length(added, i);
                    if (length < least[i]) {
                        least[i] = length;
                        from[i] = added;
                    }
                    next = next < 0 || least[i] < least[next] ? i : next;
                }
            }
            added = next;
        }
        sum += joined();
        for (double w : weight) {
            sum -= 2 * w;
        }
        return sum;
    }

    private double joined() {
        int first = -1;
        int second = -1;
        for (int i = 1; i < n; i++) {
            if (first < 0 || length(0, i) < length(0, first)) {
                second = first;
                first = i;
            } else if (second < 0 || length(0, i) < length(0, second)) {
                second = i;
            }
        }
        degree[0] = 2;
        degree[first]++;
        degree[second]++;
        return length(0, first) + length(0, second);
    }

    private double length(int i, int j) {
        return Math.hypot(x[i] - x[j], y[i] - y[j]) + weight[i] + weight[j];
    }
}
