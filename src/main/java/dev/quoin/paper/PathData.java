package dev.quoin.paper;

import dev.quoin.geometry.Decimals;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.PathVisitor;

/** An outline with y up as SVG path data with y down. */
final class PathData implements PathVisitor {
    private final StringBuilder data = new StringBuilder();

    private PathData() {}

    static String of(Path path) {
        PathData writer = new PathData();
        path.forEach(writer);
        return writer.data.toString();
    }

    @Override
    public void moveTo(double x, double y) {
        put('M', x, y);
    }

    @Override
    public void lineTo(double x, double y) {
        put('L', x, y);
    }

    @Override
    public void quadTo(double cx, double cy, double x, double y) {
        put('Q', cx, cy, x, y);
    }

    @Override
    public void cubicTo(double c1x, double c1y, double c2x, double c2y, double x, double y) {
        put('C', c1x, c1y, c2x, c2y, x, y);
    }

    @Override
    public void close() {
        data.append('Z');
    }

    private void put(char verb, double... xy) {
        char before = verb;
        for (int i = 0; i < xy.length; i++) {
            data.append(before).append(Decimals.mm(i % 2 == 0 ? xy[i] : -xy[i]));
            before = ' ';
        }
    }
}
