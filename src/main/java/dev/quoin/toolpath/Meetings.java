package dev.quoin.toolpath;

import dev.quoin.geometry.Polyline;
import java.util.Arrays;
import java.util.List;

/**
 * Whether the lines of closed chains meet anywhere but at the corners where one follows the other. Sorted by their left
 * ends, only lines whose boxes meet are looked at. In doubt, within the rounding of numbers, they meet.
 */
final class Meetings {
    /** Nearer than this may be touching, mm. */
    private static final double NEAR = 1e-9;

    /** Left, right, lower and upper end of each line's box, then its own ends. */
    private final double[][] lines;

    private Meetings(double[][] lines) {
        this.lines = lines;
    }

    /** Whether any two lines of the chains, all of which count as closed, meet where neither follows the other. */
    static boolean any(List<Polyline> chains) {
        double[][] lines = new double[chains.stream().mapToInt(Polyline::size).sum()][];
        int count = 0;
        for (Polyline chain : chains) {
            for (int i = 0, j = chain.size() - 1; i < chain.size(); j = i++) {
                lines[count++] = line(chain.x(j), chain.y(j), chain.x(i), chain.y(i));
            }
        }
        Arrays.sort(lines, (a, b) -> Double.compare(a[0], b[0]));
        return new Meetings(lines).any();
    }

    private static double[] line(double x0, double y0, double x1, double y1) {
        return new double[] {
            Math.min(x0, x1) - NEAR,
            Math.max(x0, x1) + NEAR,
            Math.min(y0, y1) - NEAR,
            Math.max(y0, y1) + NEAR,
            x0,
            y0,
            x1,
            y1
        };
    }

    private boolean any() {
        for (int i = 0; i < lines.length; i++) {
            for (int k = i + 1; k < lines.length && lines[k][0] <= lines[i][1]; k++) {
                if (lines[k][2] <= lines[i][3] && lines[i][2] <= lines[k][3] && meet(lines[i], lines[k])) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean meet(double[] a, double[] b) {
        if (follows(a, b)) {
            return foldsBack(a, b);
        }
        if (follows(b, a)) {
            return foldsBack(b, a);
        }
        return !onOneSide(a, b) && !onOneSide(b, a);
    }

    /** Whether b starts where a ends. */
    private static boolean follows(double[] a, double[] b) {
        return a[6] == b[4] && a[7] == b[5];
    }

    /** Whether b, which starts where a ends, leads back along a, or is no line at all. */
    private static boolean foldsBack(double[] a, double[] b) {
        double side = side(a, b[6], b[7]);
        boolean back = (a[6] - a[4]) * (b[6] - b[4]) + (a[7] - a[5]) * (b[7] - b[5]) <= 0;
        return back && Math.abs(side) <= NEAR * length(a);
    }

    /** Whether both ends of b lie clearly on one side of the line through a. */
    private static boolean onOneSide(double[] a, double[] b) {
        double least = NEAR * length(a);
        double first = side(a, b[4], b[5]);
        double second = side(a, b[6], b[7]);
        return first > least && second > least || first < -least && second < -least;
    }

    private static double side(double[] a, double x, double y) {
        return (a[6] - a[4]) * (y - a[5]) - (a[7] - a[5]) * (x - a[4]);
    }

    private static double length(double[] a) {
        return Math.hypot(a[6] - a[4], a[7] - a[5]);
    }
}
