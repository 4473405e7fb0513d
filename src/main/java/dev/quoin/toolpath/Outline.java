package dev.quoin.toolpath;

import dev.quoin.geometry.Polyline;
import java.util.Arrays;

/** One chain of lines to be followed. A closed one may start at each of its points, one way for each. */
record Outline(Polyline line, boolean closed) implements Piece {
    /** A chain as it was flattened: one that ends where it starts is closed, whether the file says so or not. */
    static Outline of(Polyline line) {
        int last = line.size() - 1;
        if (!line.closed() && last > 1 && line.x(0) == line.x(last) && line.y(0) == line.y(last)) {
            double[] xy = Arrays.copyOf(line.xy(), 2 * last);
            return new Outline(new Polyline(xy, true), true);
        }
        return new Outline(line, line.closed() && last > 0);
    }

    @Override
    public int ways() {
        return closed ? line.size() : 1;
    }

    @Override
    public double startX(int way) {
        return line.x(way);
    }

    @Override
    public double startY(int way) {
        return line.y(way);
    }

    @Override
    public double endX(int way) {
        return closed ? line.x(way) : line.x(line.size() - 1);
    }

    @Override
    public double endY(int way) {
        return closed ? line.y(way) : line.y(line.size() - 1);
    }

    @Override
    public void stroke(int way, boolean backwards, Strokes.Builder strokes) {
        int n = line.size();
        int points = closed ? n + 1 : n;
        for (int i = 0; i < points; i++) {
            int p = backwards ? way + points - 1 - i : way + i;
            strokes.point(line.x(p % n), line.y(p % n));
        }
        strokes.end();
    }
}
