package dev.quoin.lettering;

import java.util.ArrayList;
import java.util.List;

/**
 * The linear programme "largest size s and its place x, y, where each constraint {@code h s + a x + b y <= c} holds", by
 * the dual simplex method: of the constraints three are tight; the one most violated replaces one of them, until none is
 * violated (G. Dantzig, Linear Programming and Extensions, 1963, chapter 11).
 */
final class LargestPlace {
    private static final int MOST_EXCHANGES = 300;
    private static final double TIGHT = 1e-11;

    /** Size, and a trace of x and y, so that no exchange leaves things as good as they were and the method cannot turn round. */
    private static final double[] AIM = {1, 1.0e-6, 1.7e-6};

    private final List<double[]> constraints = new ArrayList<>();

    /** Starts with bounds that any answer keeps: the size, and the place. */
    LargestPlace(double mostSize, double mostX, double mostY) {
        add(1, 0, 0, mostSize);
        add(0, 1, 0, mostX);
        add(0, 0, 1, mostY);
    }

    void add(double h, double a, double b, double c) {
        constraints.add(new double[] {h, a, b, c});
    }

    /** Size, x, y; all constraints hold but for rounding. */
    double[] solve() {
        int[] tight = {0, 1, 2};
        double[] best = crossing(tight);
        for (int i = 0; i < MOST_EXCHANGES; i++) {
            int violated = mostViolated(best);
            if (violated < 0 || !exchange(tight, violated)) {
                return best;
            }
            best = crossing(tight);
        }
        return best;
    }

    private int mostViolated(double[] at) {
        int worst = -1;
        double most = TIGHT;
        for (int i = 0; i < constraints.size(); i++) {
            double[] k = constraints.get(i);
            double over = k[0] * at[0] + k[1] * at[1] + k[2] * at[2] - k[3];
            if (over > most) {
                most = over;
                worst = i;
            }
        }
        return worst;
    }

    /** Puts a constraint in the place of that tight one without which the size is still bounded. */
    private boolean exchange(int[] tight, int entering) {
        int leaving = -1;
        double surest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < 3; i++) {
            int[] trial = tight.clone();
            trial[i] = entering;
            double least = leastMultiplier(trial);
            if (least > surest) {
                surest = least;
                leaving = i;
            }
        }
        if (leaving < 0 || surest < -1e-12) {
            return false;
        }
        tight[leaving] = entering;
        return true;
    }

    /** The least weight by which the three constraints sum up to a bound on the aim; negative if they do not bound it. */
    private double leastMultiplier(int[] of) {
        double[] p = constraints.get(of[0]);
        double[] q = constraints.get(of[1]);
        double[] r = constraints.get(of[2]);
        double det = determinant(p, q, r);
        if (Math.abs(det) < 1e-14) {
            return Double.NEGATIVE_INFINITY;
        }
        double u = determinant(AIM, q, r) / det;
        double v = determinant(p, AIM, r) / det;
        double w = determinant(p, q, AIM) / det;
        return Math.min(u, Math.min(v, w));
    }

    private double[] crossing(int[] of) {
        double[] p = constraints.get(of[0]);
        double[] q = constraints.get(of[1]);
        double[] r = constraints.get(of[2]);
        double det = determinant(p, q, r);
        double[] at = new double[3];
        for (int i = 0; i < 3; i++) {
            at[i] = determinant(with(p, i), with(q, i), with(r, i)) / det;
        }
        return at;
    }

    private static double[] with(double[] constraint, int column) {
        double[] changed = constraint.clone();
        changed[column] = constraint[3];
        return changed;
    }

    private static double determinant(double[] p, double[] q, double[] r) {
        return p[0] * (q[1] * r[2] - q[2] * r[1])
                - p[1] * (q[0] * r[2] - q[2] * r[0])
                + p[2] * (q[0] * r[1] - q[1] * r[0]);
    }
}
