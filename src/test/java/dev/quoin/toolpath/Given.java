package dev.quoin.toolpath;

import dev.quoin.art.Mark;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import dev.quoin.shop.EdgePass;
import dev.quoin.shop.FieldMirror;
import dev.quoin.shop.Machine;
import dev.quoin.shop.Method;
import dev.quoin.shop.Pattern;
import dev.quoin.shop.Step;
import java.awt.geom.Line2D;

/** Machines, steps and marks for tests; all figures invented. */
final class Given {
    private Given() {}

    /** A machine with these delays in s, and a jump speed in mm/s. */
    static Machine machine(double jumpSpeed, double jumpSettle, double laserOn, double corner) {
        return machine(jumpSpeed, jumpSettle, laserOn, corner, 0, 0);
    }

    /** With the seconds for a piece and for a plate, too. */
    static Machine machine(
            double jumpSpeed, double jumpSettle, double laserOn, double corner, double load, double plate) {
        return new Machine(
                20,
                1064,
                10,
                1.3,
                "4",
                10_000,
                1,
                1000,
                1,
                500,
                jumpSpeed,
                jumpSettle,
                laserOn,
                0,
                0,
                corner,
                load,
                plate,
                0,
                0,
                0,
                FieldMirror.NONE,
                0);
    }

    static Step follow(double speed, int passes) {
        return follow("outline", speed, passes);
    }

    static Step follow(String process, double speed, int passes) {
        return new Step(
                1, process, Method.FOLLOW, 50, speed, 40, 100, 0, 0, 0, Pattern.LINES, passes, 0, EdgePass.NONE, "");
    }

    static Step fill(double spacing, double angle) {
        return fill(spacing, angle, 0, 1, Pattern.LINES);
    }

    static Step fill(double spacing, double angle, double turn, int passes, Pattern pattern) {
        return new Step(
                1,
                "engrave",
                Method.FILL,
                50,
                1000,
                40,
                100,
                spacing,
                angle,
                turn,
                pattern,
                passes,
                0,
                EdgePass.NONE,
                "");
    }

    static Step edged(double spacing, double inset, EdgePass edge) {
        return new Step(1, "engrave", Method.FILL, 50, 1000, 40, 100, spacing, 0, 0, Pattern.LINES, 1, inset, edge, "");
    }

    static Mark engraved(Path path, FillRule rule) {
        return new Mark("engrave", path, new Area(path, rule));
    }

    static Mark followed(Path path) {
        return followed("outline", path);
    }

    static Mark followed(String process, Path path) {
        return new Mark(process, path, Area.EMPTY);
    }

    static Path box(double width, double height) {
        return Path.of(Box.centred(width, height));
    }

    static Path box(double minX, double minY, double maxX, double maxY) {
        return Path.of(new Box(minX, minY, maxX, maxY));
    }

    static Path line(double... xy) {
        Path.Builder path = Path.builder().moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        return path.build();
    }

    /** A closed chain of lines. */
    static Path ring(double... xy) {
        return Path.builder().append(line(xy)).close().build();
    }

    /** The strokes of its one pass, or none. */
    static Strokes strokes(BeamPath path) {
        return path.isEmpty() ? Strokes.EMPTY : path.passes().get(0);
    }

    /** From a point to a closed chain, mm. */
    static double distance(Polyline chain, double x, double y) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0, j = chain.size() - 1; i < chain.size(); j = i++) {
            least = Math.min(least, Line2D.ptSegDist(chain.x(j), chain.y(j), chain.x(i), chain.y(i), x, y));
        }
        return least;
    }

    /** A circle of four cubic curves, anticlockwise where y is up; off a true one by 0.03 % of its radius. */
    static Path circle(double x, double y, double r) {
        double k = 0.5522847498 * r;
        return Path.builder()
                .moveTo(x + r, y)
                .cubicTo(x + r, y + k, x + k, y + r, x, y + r)
                .cubicTo(x - k, y + r, x - r, y + k, x - r, y)
                .cubicTo(x - r, y - k, x - k, y - r, x, y - r)
                .cubicTo(x + k, y - r, x + r, y - k, x + r, y)
                .close()
                .build();
    }
}
