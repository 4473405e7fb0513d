package dev.quoin.paper;

import dev.quoin.geometry.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the path data that papers' own pictures hold: absolute commands, of SVG's those without arcs and short curves. */
final class SvgPathData {
    private static final Pattern TOKEN = Pattern.compile("[A-Za-z]|[-+]?[0-9]*\\.?[0-9]+");

    private final Path.Builder path = Path.builder();
    private final Matcher tokens;
    private char command;
    private double x;
    private double y;

    private SvgPathData(String data) {
        this.tokens = TOKEN.matcher(data);
    }

    /** The path, in the coordinates of the data. */
    static Path read(String data) {
        SvgPathData reader = new SvgPathData(data);
        while (reader.tokens.find()) {
            reader.next();
        }
        return reader.path.build();
    }

    private void next() {
        String token = tokens.group();
        if (Character.isLetter(token.charAt(0))) {
            command = token.charAt(0);
            if (command == 'Z') {
                path.close();
                return;
            }
            tokens.find();
        }
        segment(Double.parseDouble(tokens.group()));
    }

    private void segment(double first) {
        switch (command) {
            case 'M' -> {
                to(first, number());
                path.moveTo(x, y);
                command = 'L';
            }
            case 'L' -> lineTo(first, number());
            case 'H' -> lineTo(first, y);
            case 'V' -> lineTo(x, first);
            case 'Q' -> {
                double cy = number();
                to(number(), number());
                path.quadTo(first, cy, x, y);
            }
            case 'C' -> {
                double c1y = number();
                double c2x = number();
                double c2y = number();
                to(number(), number());
                path.cubicTo(first, c1y, c2x, c2y, x, y);
            }
            default -> throw new IllegalArgumentException("path data with '" + command + "'");
        }
    }

    private void lineTo(double toX, double toY) {
        to(toX, toY);
        path.lineTo(x, y);
    }

    private void to(double toX, double toY) {
        x = toX;
        y = toY;
    }

    private double number() {
        tokens.find();
        return Double.parseDouble(tokens.group());
    }
}
