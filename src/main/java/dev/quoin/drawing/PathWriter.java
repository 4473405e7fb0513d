package dev.quoin.drawing;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.PathVisitor;

/** Writes path data with absolute commands; a command that repeats is written once. */
final class PathWriter implements PathVisitor {
    private static final char NONE = 0;

    private final SvgBytes bytes;
    private Affine move = Affine.IDENTITY;
    private char command = NONE;

    PathWriter(SvgBytes bytes) {
        this.bytes = bytes;
    }

    void begin() {
        command = NONE;
    }

    void write(Path path, Affine newMove) {
        move = newMove;
        path.forEach(this);
    }

    @Override
    public void moveTo(double x, double y) {
        // A second pair after M would be a line.
        command = 'M';
        point('M', x, y);
    }

    @Override
    public void segments(double[] xy, int from, int to) {
        command = 'L';
        bytes.segments(xy, from, to, move);
    }

    @Override
    public void lineTo(double x, double y) {
        point(begun('L'), x, y);
    }

    @Override
    public void quadTo(double cx, double cy, double x, double y) {
        point(begun('Q'), cx, cy);
        point(' ', x, y);
    }

    @Override
    public void cubicTo(double c1x, double c1y, double c2x, double c2y, double x, double y) {
        point(begun('C'), c1x, c1y);
        point(' ', c2x, c2y);
        point(' ', x, y);
    }

    @Override
    public void close() {
        bytes.raw('Z');
        command = 'Z';
    }

    /** What stands before the first pair of a command: its letter, or a blank where it repeats. */
    private char begun(char next) {
        char before = command == next ? ' ' : next;
        command = next;
        return before;
    }

    private void point(char before, double x, double y) {
        bytes.point(before, move.x(x, y), move.y(x, y));
    }
}
