package dev.quoin.drawing;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Path;

/**
 * An arc of path data as cubic curves. From its ends to its centre: SVG 1.1, appendix F.6.5, radii that are too small
 * made larger by F.6.6. Each curve turns by at most a quarter, with control points at {@code 4/3 tan(angle/4)} along the
 * tangents, which leaves the arc by at most 0.00028 of its radius.
 */
final class EllipticalArc {
    private EllipticalArc() {}

    /** Appends the arc from the current point x0, y0; {@code turn} in degrees, from the x axis towards the y axis. */
    static void append(
            Path.Builder path,
            double x0,
            double y0,
            double rx0,
            double ry0,
            double turn,
            boolean large,
            boolean sweep,
            double x,
            double y) {
        if (x0 == x && y0 == y) {
            return;
        }
        if (rx0 == 0 || ry0 == 0) {
            path.lineTo(x, y);
            return;
        }
        Affine axes = Affine.rotate(turn);
        double halfX = (x0 - x) / 2;
        double halfY = (y0 - y) / 2;
        double px = axes.a() * halfX + axes.b() * halfY;
        double py = axes.c() * halfX + axes.d() * halfY;
        double grow = Math.max(1, Math.hypot(px / rx0, py / ry0));
        double rx = Math.abs(rx0) * grow;
        double ry = Math.abs(ry0) * grow;
        // On the unit circle the ends are +-(ux, uy) from the middle of the chord.
        double ux = px / rx;
        double uy = py / ry;
        double square = ux * ux + uy * uy;
        double off = Math.sqrt(Math.max(0, 1 - square) / square) * (large == sweep ? -1 : 1);
        double cx = off * uy;
        double cy = -off * ux;
        double from = Math.atan2(uy - cy, ux - cx);
        double extent = Math.atan2(-uy - cy, -ux - cx) - from;
        if (sweep && extent < 0) {
            extent += 2 * Math.PI;
        } else if (!sweep && extent > 0) {
            extent -= 2 * Math.PI;
        }
        Affine toPath = Affine.translate(cx, cy)
                .then(Affine.scale(rx, ry))
                .then(axes)
                .then(Affine.translate((x0 + x) / 2, (y0 + y) / 2));
        curves(path, toPath, from, extent, x, y);
    }

    /** Curves along the unit circle, moved; the last ends exactly at x, y. */
    private static void curves(Path.Builder path, Affine toPath, double from, double extent, double x, double y) {
        int n = Math.max(1, (int) Math.ceil(Math.abs(extent) / (Math.PI / 2) - 1e-9));
        double step = extent / n;
        double reach = 4.0 / 3 * Math.tan(step / 4);
        for (int i = 0; i < n; i++) {
            double a = from + i * step;
            double b = a + step;
            double c1x = Math.cos(a) - reach * Math.sin(a);
            double c1y = Math.sin(a) + reach * Math.cos(a);
            double c2x = Math.cos(b) + reach * Math.sin(b);
            double c2y = Math.sin(b) - reach * Math.cos(b);
            boolean last = i == n - 1;
            path.cubicTo(
                    toPath.x(c1x, c1y),
                    toPath.y(c1x, c1y),
                    toPath.x(c2x, c2y),
                    toPath.y(c2x, c2y),
                    last ? x : toPath.x(Math.cos(b), Math.sin(b)),
                    last ? y : toPath.y(Math.cos(b), Math.sin(b)));
        }
    }
}
