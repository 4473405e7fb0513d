package dev.quoin.geometry;

/**
 * An affine move of the plane: {@code x' = a x + c y + e}, {@code y' = b x + d y + f} (the order of SVG's {@code matrix}).
 */
public record Affine(double a, double b, double c, double d, double e, double f) {
    public static final Affine IDENTITY = new Affine(1, 0, 0, 1, 0, 0);

    public static Affine translate(double dx, double dy) {
        return new Affine(1, 0, 0, 1, dx, dy);
    }

    public static Affine scale(double sx, double sy) {
        return new Affine(sx, 0, 0, sy, 0, 0);
    }

    /** A rotation about the origin from the x axis towards the y axis; quarter turns are exact. */
    public static Affine rotate(double degrees) {
        double turn = ((degrees % 360) + 360) % 360;
        if (turn % 90 == 0) {
            double[] sines = {0, 1, 0, -1, 0};
            int quarter = (int) (turn / 90);
            return new Affine(sines[quarter + 1], sines[quarter], -sines[quarter], sines[quarter + 1], 0, 0).plain();
        }
        double cos = Math.cos(Math.toRadians(turn));
        double sin = Math.sin(Math.toRadians(turn));
        return new Affine(cos, sin, -sin, cos, 0, 0);
    }

    /** This move, and then the next. */
    public Affine then(Affine next) {
        return new Affine(
                next.a * a + next.c * b,
                next.b * a + next.d * b,
                next.a * c + next.c * d,
                next.b * c + next.d * d,
                next.a * e + next.c * f + next.e,
                next.b * e + next.d * f + next.f);
    }

    public double x(double x, double y) {
        return a * x + c * y + e;
    }

    public double y(double x, double y) {
        return b * x + d * y + f;
    }

    public Point apply(Point p) {
        return new Point(x(p.x(), p.y()), y(p.x(), p.y()));
    }

    /** The box around the moved corners of a box. */
    public Box apply(Box box) {
        if (box.isEmpty()) {
            return box;
        }
        return Box.EMPTY
                .include(x(box.minX(), box.minY()), y(box.minX(), box.minY()))
                .include(x(box.maxX(), box.minY()), y(box.maxX(), box.minY()))
                .include(x(box.minX(), box.maxY()), y(box.minX(), box.maxY()))
                .include(x(box.maxX(), box.maxY()), y(box.maxX(), box.maxY()));
    }

    /** Whether everything stays where it is. */
    public boolean isIdentity() {
        return a == 1 && b == 0 && c == 0 && d == 1 && e == 0 && f == 0;
    }

    public double determinant() {
        return a * d - b * c;
    }

    /**
     * The move that undoes this one.
     *
     * @throws ArithmeticException if it flattens the plane (its determinant is 0)
     */
    public Affine inverse() {
        double det = determinant();
        if (det == 0 || !Double.isFinite(det)) {
            throw new ArithmeticException("a move that flattens the plane cannot be undone");
        }
        return new Affine(d / det, -b / det, -c / det, a / det, (c * f - d * e) / det, (b * e - a * f) / det);
    }

    /** The angle of the moved x axis, degrees in (-180, 180], from the x axis towards the y axis. */
    public double rotation() {
        return Math.toDegrees(Math.atan2(b, a));
    }

    /** Whether shapes keep their size and their hand: a turn and a shift, no scaling, skew or mirror. */
    public boolean isRigid() {
        double tolerance = 1e-6;
        return Math.abs(a - d) < tolerance && Math.abs(b + c) < tolerance && Math.abs(determinant() - 1) < tolerance;
    }

    private Affine plain() {
        return new Affine(a + 0.0, b + 0.0, c + 0.0, d + 0.0, e, f);
    }
}
