package dev.quoin.plate;

import dev.quoin.art.Mark;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Clip;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import dev.quoin.shop.Cylinder;

/**
 * Lays a drawing around a round piece, and shows a strip of it from above. A mark at s around the piece from the strip's
 * middle is at {@code x = r sin(s / r)}; on a tapered piece, whose radius r(y) changes along it, the drawing changes its
 * width with it, so that strips meet all along: {@code x = r(y) sin(s / r)}. Points are moved exactly; lines and curves
 * become lines within 0.002 mm of them.
 */
public record Wrap(Cylinder piece, Band band) {
    private static final double FINE = 0.001;

    /** What of a mark lies in the strip, as it is seen from above; areas cut for real, paths in open pieces. */
    Mark show(Mark mark) {
        Area seen = strip(mark.area());
        Path followed = mark.path().isEmpty() ? Path.EMPTY : seen(new Clip(region()).cut(mark.path()));
        return new Mark(mark.process(), followed, new Area(seen(seen.outline()), FillRule.EVEN_ODD));
    }

    /** The part of an area in the strip, in rings that cross nowhere. */
    private Area strip(Area area) {
        java.awt.geom.Area part = new java.awt.geom.Area(area.outline().toShape(area.rule()));
        part.intersect(new java.awt.geom.Area(region().outline().toShape(FillRule.NON_ZERO)));
        return new Area(Path.of(part), FillRule.EVEN_ODD);
    }

    private Area region() {
        double reach = 10 * piece.height();
        return new Area(Path.of(new Box(band.from(), -reach, band.to(), reach)), FillRule.NON_ZERO);
    }

    private Path seen(Path path) {
        Path.Builder seen = Path.builder();
        for (Polyline line : path.flatten(FINE)) {
            append(line, seen);
        }
        return seen.build();
    }

    private void append(Polyline line, Path.Builder seen) {
        double longest = Math.sqrt(8 * piece.radius() * FINE);
        int n = line.size();
        for (int i = 0; i < (line.closed() ? n : n - 1); i++) {
            double x = line.x(i);
            double y = line.y(i);
            double dx = line.x((i + 1) % n) - x;
            double dy = line.y((i + 1) % n) - y;
            int steps = (int) Math.max(1, Math.ceil(Math.abs(dx) / longest));
            for (int step = 0; step < steps; step++) {
                point(x + dx * step / steps, y + dy * step / steps, i == 0 && step == 0, seen);
            }
        }
        if (line.closed()) {
            seen.close();
        } else {
            point(line.x(n - 1), line.y(n - 1), n == 1, seen);
        }
    }

    private void point(double s, double y, boolean first, Path.Builder seen) {
        double x = piece.radiusAt(y) * Math.sin((s - band.middle()) / piece.radius());
        if (first) {
            seen.moveTo(x, y);
        } else {
            seen.lineTo(x, y);
        }
    }

    /** Where a point that is seen from above lies around the piece, mm; the inverse of laying it there. */
    public double around(double x, double y) {
        double sine = Math.max(-1, Math.min(1, x / piece.radiusAt(y)));
        return band.middle() + piece.radius() * Math.asin(sine);
    }

    /** How far from its middle the strip reaches to each side, seen from above, mm. */
    public double halfWidth() {
        return piece.largestRadius() * Math.sin((band.to() - band.from()) / 2 / piece.radius());
    }
}
