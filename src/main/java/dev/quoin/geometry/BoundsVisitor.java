package dev.quoin.geometry;

/** Finds the tight box around a path: the ends of its pieces, and where its curves turn. */
final class BoundsVisitor extends CubicVisitor {
    private double minX = Double.POSITIVE_INFINITY;
    private double minY = Double.POSITIVE_INFINITY;
    private double maxX = Double.NEGATIVE_INFINITY;
    private double maxY = Double.NEGATIVE_INFINITY;

    Box box() {
        return new Box(minX, minY, maxX, maxY);
    }

    @Override
    protected void move(double toX, double toY) {
        end(toX, toY);
    }

    @Override
    protected void line(double toX, double toY) {
        end(toX, toY);
    }

    @Override
    protected void curve(
            double fromX, double fromY, double c1x, double c1y, double c2x, double c2y, double toX, double toY) {
        end(toX, toY);
        // A curve does not leave the hull of its ends and its control points.
        if (outside(c1x, c1y) || outside(c2x, c2y)) {
            turns(fromX, c1x, c2x, toX, true);
            turns(fromY, c1y, c2y, toY, false);
        }
    }

    @Override
    protected void back() {
        // It leads to where the piece began, which is in.
    }

    private boolean outside(double px, double py) {
        return px < minX || px > maxX || py < minY || py > maxY;
    }

    private void end(double toX, double toY) {
        include(toX, true);
        include(toY, false);
    }

    /** Includes the values where the derivative of one coordinate is zero: a t^2 + b t + c = 0, t inside (0, 1). */
    private void turns(double p0, double p1, double p2, double p3, boolean horizontal) {
        double a = -p0 + 3 * p1 - 3 * p2 + p3;
        double b = 2 * (p0 - 2 * p1 + p2);
        double c = p1 - p0;
        if (Math.abs(a) < 1e-12 * (Math.abs(b) + Math.abs(c))) {
            turn(-c / b, p0, p1, p2, p3, horizontal);
            return;
        }
        double root = Math.sqrt(b * b - 4 * a * c);
        turn((-b + root) / (2 * a), p0, p1, p2, p3, horizontal);
        turn((-b - root) / (2 * a), p0, p1, p2, p3, horizontal);
    }

    private void turn(double t, double p0, double p1, double p2, double p3, boolean horizontal) {
        if (t > 0 && t < 1) {
            double s = 1 - t;
            include(s * s * s * p0 + 3 * s * s * t * p1 + 3 * s * t * t * p2 + t * t * t * p3, horizontal);
        }
    }

    private void include(double value, boolean horizontal) {
        if (horizontal) {
            minX = Math.min(minX, value);
            maxX = Math.max(maxX, value);
        } else {
            minY = Math.min(minY, value);
            maxY = Math.max(maxY, value);
        }
    }
}
