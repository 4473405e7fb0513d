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
        for (int i = 1; i < size(); i++) {
            sum += distance(i - 1, i);
        }
        return closed ? sum + distance(size() - 1, 0) : sum;
    }

    /** Millimetres neither overflow nor vanish when squared, so that the slower hypot is not needed. */
    private double distance(int from, int to) {
        double dx = x(to) - x(from);
        double dy = y(to) - y(from);
        return Math.sqrt(dx * dx + dy * dy);
    }

    /** The area it surrounds (shoelace), mm2; above zero where it runs from the x axis towards the y axis. */
    public double signedArea() {
        double twice = 0;
        for (int i = 0, j = size() - 1; i < size(); j = i++) {
            twice += x(j) * y(i) - x(i) * y(j);
        }
        return twice / 2;
    }
}
