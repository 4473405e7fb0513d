package dev.quoin.geometry;

/**
 * A chain of straight lines, mm. Not copied: whoever makes one hands its array over.
 *
 * @param xy x0, y0, x1, y1, ...; at least one point. A closed one does not repeat its first point at the end
 * @param closed whether a line leads from the last point back to the first
 */
@SuppressWarnings("ArrayRecordComponent") // Identity is enough; chains are compared by their points where that matters.
public record Polyline(double[] xy, boolean closed) {
    public int size() {
        return xy.length / 2;
    }

    public double x(int i) {
        return xy[2 * i];
    }

    public double y(int i) {
        return xy[2 * i + 1];
    }

    public Point point(int i) {
        return new Point(x(i), y(i));
    }

    /** Its length, the closing line included, mm. */
    public double length() {
        double sum = 0;
        for (int i = 2; i < xy.length; i += 2) {
            sum += distance(i - 2, i);
        }
        return closed ? sum + distance(xy.length - 2, 0) : sum;
    }

    /** Millimetres neither overflow nor vanish when squared, so that the slower hypot is not needed. */
    private double distance(int from, int to) {
        double dx = xy[to] - xy[from];
        double dy = xy[to + 1] - xy[from + 1];
        return Math.sqrt(dx * dx + dy * dy);
    }

    /** The area it surrounds (shoelace), mm2; above zero where it runs from the x axis towards the y axis. */
    public double signedArea() {
        double twice = 0;
        for (int i = 0, j = xy.length - 2; i < xy.length; j = i, i += 2) {
            twice += xy[j] * xy[i + 1] - xy[i] * xy[j + 1];
        }
        return twice / 2;
    }
}
