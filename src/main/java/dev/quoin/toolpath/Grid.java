package dev.quoin.toolpath;

import dev.quoin.geometry.Affine;

/**
 * The parallel lines of a hatch. Seen along them, u runs along the lines (mm) and line number k lies {@code (k + 1/2) *
 * spacing} to the left of the item's centre: none runs through the centre, so that a shape of whole spacings around it
 * holds its whole number of lines, none on its edge.
 *
 * @param cos of the lines' angle
 * @param sin of the lines' angle
 * @param spacing mm
 */
record Grid(double cos, double sin, double spacing) {
    Grid {
        if (!(spacing > 0)) {
            throw new IllegalArgumentException("spacing " + spacing + " mm");
        }
    }

    /** Lines at an angle, degrees anticlockwise from the x axis. */
    static Grid at(double angle, double spacing) {
        Affine turn = Affine.rotate(angle);
        return new Grid(turn.a(), turn.b(), spacing);
    }

    /** How far along the lines a point lies, mm. */
    double u(double x, double y) {
        return x * cos + y * sin;
    }

    /** At which line a point lies; whole on a line. */
    double line(double x, double y) {
        return (y * cos - x * sin) / spacing - 0.5;
    }

    double x(double u, int line) {
        return u * cos - (line + 0.5) * spacing * sin;
    }

    double y(double u, int line) {
        return u * sin + (line + 0.5) * spacing * cos;
    }
}
