package dev.quoin.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Turns curves into chains of lines. A curve is cut into n equal steps of its parameter, n from Wang's bound: the lines
 * of a cubic leave it by at most {@code (1/8) (1/n)^2 max|p''|} (G. Wang, J. Computing, Zhejiang Univ., 1984; as quoted in
 * L. Filip, R. Magedson, R. Markot, "Surface algorithms using bounds on derivatives", CAGD 3, 1986).
 */
final class Flattener implements PathVisitor {
    private static final int MOST_STEPS = 10_000;

    private final double tolerance;
    private final List<Polyline> done = new ArrayList<>();
    private double[] xy = new double[64];
    private int count;
    /** Whether the piece under way was begun by closing the one before, not by a move. */
    private boolean begunByClose;

    Flattener(double tolerance) {
        if (!(tolerance > 0)) {
            throw new IllegalArgumentException("tolerance " + tolerance + " mm");
        }
        this.tolerance = tolerance;
    }

    List<Polyline> result() {
        finish(false);
        return done;
    }

    @Override
    public void moveTo(double x, double y) {
        finish(false);
        add(x, y);
    }

    @Override
    public void lineTo(double x, double y) {
        add(x, y);
    }

    @Override
    public void quadTo(double cx, double cy, double x, double y) {
        double x0 = xy[count - 2];
        double y0 = xy[count - 1];
        double bend = 2 * length(x0 - 2 * cx + x, y0 - 2 * cy + y);
        int n = steps(bend);
        reserve(n);
        for (int i = 1; i < n; i++) {
            double t = (double) i / n;
            double s = 1 - t;
            double b0 = s * s;
            double b1 = 2 * s * t;
            double b2 = t * t;
            put(b0 * x0 + b1 * cx + b2 * x, b0 * y0 + b1 * cy + b2 * y);
        }
        put(x, y);
    }

    @Override
    public void cubicTo(double c1x, double c1y, double c2x, double c2y, double x, double y) {
        double x0 = xy[count - 2];
        double y0 = xy[count - 1];
        double bend = 6
                * Math.max(
                        length(x0 - 2 * c1x + c2x, y0 - 2 * c1y + c2y), length(c1x - 2 * c2x + x, c1y - 2 * c2y + y));
        int n = steps(bend);
        reserve(n);
        for (int i = 1; i < n; i++) {
            double t = (double) i / n;
            double s = 1 - t;
            double b0 = s * s * s;
            double b1 = 3 * s * s * t;
            double b2 = 3 * s * t * t;
            double b3 = t * t * t;
            put(b0 * x0 + b1 * c1x + b2 * c2x + b3 * x, b0 * y0 + b1 * c1y + b2 * c2y + b3 * y);
        }
        put(x, y);
    }

    @Override
    public void close() {
        if (count == 0) {
            return;
        }
        double startX = xy[0];
        double startY = xy[1];
        finish(true);
        // SVG: what follows a close without a move starts where the closed piece started.
        add(startX, startY);
        begunByClose = true;
    }

    private static double length(double dx, double dy) {
        return Math.sqrt(dx * dx + dy * dy);
    }

    private int steps(double bend) {
        int n = (int) Math.ceil(Math.sqrt(bend / (8 * tolerance)));
        return Math.min(Math.max(n, 1), MOST_STEPS);
    }

    private void add(double x, double y) {
        reserve(1);
        put(x, y);
    }

    private void reserve(int points) {
        if (count + 2 * points > xy.length) {
            xy = Arrays.copyOf(xy, Math.max(2 * xy.length, count + 2 * points));
        }
    }

    /** Adds a point, unless it repeats the one before it, where room is reserved. */
    private void put(double x, double y) {
        int at = count;
        if (at == 0 || xy[at - 2] != x || xy[at - 1] != y) {
            xy[at] = x;
            xy[at + 1] = y;
            count = at + 2;
        }
    }

    private void finish(boolean closed) {
        boolean notDrawn = begunByClose && count == 2 && !closed;
        if (closed && count > 2 && xy[0] == xy[count - 2] && xy[1] == xy[count - 1]) {
            count -= 2;
        }
        if (count > 0 && !notDrawn) {
            done.add(new Polyline(Arrays.copyOf(xy, count), closed));
        }
        count = 0;
        begunByClose = false;
    }
}
