package dev.quoin.drawing;

import dev.quoin.geometry.Path;

/**
 * SVG path data (SVG 1.1, section 8.3): the value of {@code d}. Read here and not by Batik, which widens arcs of half a
 * turn by a hundred-thousandth and so moves their middle by half a per cent of their radius.
 */
public final class PathData {
    private final PathScanner scan;
    private final Path.Builder path = Path.builder();
    private double x;
    private double y;
    private double startX;
    private double startY;
    /** The control point that a smooth curve continues from. */
    private double controlX;

    private double controlY;
    private char previous = 'M';

    private PathData(String d) {
        scan = new PathScanner(d);
    }

    /**
     * Reads path data; arcs become cubic curves within 0.0003 of their radius, all else stays what it is.
     *
     * @throws IllegalArgumentException if it is not path data; its message tells the character, from 1
     */
    public static Path parse(String d) {
        return new PathData(d).read();
    }

    private Path read() {
        char command = scan.command('M');
        if (command == 0) {
            return Path.EMPTY;
        }
        if (command != 'M' && command != 'm') {
            throw scan.unexpected();
        }
        while (command != 0) {
            segment(command);
            previous = Character.toUpperCase(command);
            // More numbers after a move are lines; a close takes none.
            char repeated = command == 'M' ? 'L' : command == 'm' ? 'l' : command;
            command = scan.command(previous == 'Z' ? 0 : repeated);
        }
        return path.build();
    }

    private void segment(char command) {
        boolean relative = Character.isLowerCase(command);
        double fromX = relative ? x : 0;
        double fromY = relative ? y : 0;
        switch (Character.toUpperCase(command)) {
            case 'M' -> move(fromX + scan.number(), fromY + scan.number());
            case 'L' -> line(fromX + scan.number(), fromY + scan.number());
            case 'H' -> line(fromX + scan.number(), y);
            case 'V' -> line(x, fromY + scan.number());
            case 'C' -> cubic(fromX + scan.number(), fromY + scan.number(), fromX, fromY);
            case 'S' -> cubic(reflectedX('C', 'S'), reflectedY('C', 'S'), fromX, fromY);
            case 'Q' -> quad(fromX + scan.number(), fromY + scan.number(), fromX, fromY);
            case 'T' -> quad(reflectedX('Q', 'T'), reflectedY('Q', 'T'), fromX, fromY);
            case 'A' -> arc(fromX, fromY);
            default -> close();
        }
    }

    private void move(double toX, double toY) {
        path.moveTo(toX, toY);
        startX = toX;
        startY = toY;
        at(toX, toY);
    }

    private void line(double toX, double toY) {
        reopen();
        path.lineTo(toX, toY);
        at(toX, toY);
    }

    private void cubic(double c1x, double c1y, double fromX, double fromY) {
        reopen();
        controlX = fromX + scan.number();
        controlY = fromY + scan.number();
        double toX = fromX + scan.number();
        double toY = fromY + scan.number();
        path.cubicTo(c1x, c1y, controlX, controlY, toX, toY);
        at(toX, toY);
    }

    private void quad(double cx, double cy, double fromX, double fromY) {
        reopen();
        double toX = fromX + scan.number();
        double toY = fromY + scan.number();
        path.quadTo(cx, cy, toX, toY);
        controlX = cx;
        controlY = cy;
        at(toX, toY);
    }

    private void arc(double fromX, double fromY) {
        reopen();
        double rx = scan.number();
        double ry = scan.number();
        double turn = scan.number();
        boolean large = scan.flag();
        boolean sweep = scan.flag();
        double toX = fromX + scan.number();
        double toY = fromY + scan.number();
        EllipticalArc.append(path, x, y, rx, ry, turn, large, sweep, toX, toY);
        at(toX, toY);
    }

    private void close() {
        path.close();
        at(startX, startY);
    }

    /** What follows a close without a move starts where the closed piece did. */
    private void reopen() {
        if (previous == 'Z') {
            path.moveTo(x, y);
        }
    }

    private void at(double newX, double newY) {
        x = newX;
        y = newY;
    }

    private double reflectedX(char curve, char smooth) {
        return previous == curve || previous == smooth ? 2 * x - controlX : x;
    }

    private double reflectedY(char curve, char smooth) {
        return previous == curve || previous == smooth ? 2 * y - controlY : y;
    }
}
