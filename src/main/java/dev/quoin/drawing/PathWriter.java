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
        bytes.raw('M');
        command = 'M';
        point(x, y);
    }

    @Override
    public void lineTo(double x, double y) {
        command('L');
        point(x, y);
    }

    @Override
    public void quadTo(double cx, double cy, double x, double y) {
        command('Q');
        point(cx, cy);
        bytes.raw(' ');
        point(x, y);
    }

    @Override
    public void cubicTo(double c1x, double c1y, double c2x, double c2y, double x, double y) {
        command('C');
        point(c1x, c1y);
        bytes.raw(' ');
        point(c2x, c2y);
        bytes.raw(' ');
        point(x, y);
    }

    @Override
    public void close() {
        bytes.raw('Z');
        command = 'Z';
    }

    private void command(char next) {
        bytes.raw(command == next ? ' ' : next);
        command = next;
    }

    private void point(double x, double y) {
        bytes.number(move.x(x, y)).raw(' ').number(move.y(x, y));
    }
}
