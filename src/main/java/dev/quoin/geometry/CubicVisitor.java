package dev.quoin.geometry;

/**
 * Follows the pen along a path, and takes a quadratic curve as the cubic one that it is: its control points lie two thirds
 * of the way to that of the quadratic.
 */
public abstract class CubicVisitor implements PathVisitor {
    private double x;
    private double y;
    private double startX;
    private double startY;

    /** A piece begins. */
    protected abstract void move(double toX, double toY);

    /** A line from where the pen is. */
    protected abstract void line(double toX, double toY);

    /** A curve from where the pen is, {@code fromX}, {@code fromY}. */
    protected abstract void curve(
            double fromX, double fromY, double c1x, double c1y, double c2x, double c2y, double toX, double toY);

    /** A line back to where the piece began. */
    protected abstract void back();

    @Override
    public final void moveTo(double toX, double toY) {
        move(toX, toY);
        startX = toX;
        startY = toY;
        penAt(toX, toY);
    }

    @Override
    public final void lineTo(double toX, double toY) {
        line(toX, toY);
        penAt(toX, toY);
    }

    @Override
    public final void quadTo(double cx, double cy, double toX, double toY) {
        cubicTo(
                x + (cx - x) * 2 / 3,
                y + (cy - y) * 2 / 3,
                toX + (cx - toX) * 2 / 3,
                toY + (cy - toY) * 2 / 3,
                toX,
                toY);
    }

    @Override
    public final void cubicTo(double c1x, double c1y, double c2x, double c2y, double toX, double toY) {
        curve(x, y, c1x, c1y, c2x, c2y, toX, toY);
        penAt(toX, toY);
    }

    @Override
    public final void close() {
        back();
        penAt(startX, startY);
    }

    private void penAt(double newX, double newY) {
        x = newX;
        y = newY;
    }
}
