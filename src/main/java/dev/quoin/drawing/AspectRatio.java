package dev.quoin.drawing;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a picture is laid into its box: SVG 1.1, section 7.8, {@code preserveAspectRatio}.
 *
 * @param x the part of the room left over that stands before it across, 0 to 1
 * @param y the same, down
 * @param stretched whether width and height are scaled apart
 * @param slice whether it covers the box, rather than standing inside
 */
record AspectRatio(double x, double y, boolean stretched, boolean slice) {
    private static final Pattern VALUE =
            Pattern.compile("(?:defer\\s+)?(?:(none)|x(Min|Mid|Max)Y(Min|Mid|Max))(?:\\s+(meet|slice))?");

    /** Reads the attribute; an empty one is {@code xMidYMid meet}; nothing if it is not understood. */
    static Optional<AspectRatio> parse(String value) {
        Matcher found = VALUE.matcher(value.isBlank() ? "xMidYMid" : value.strip());
        if (!found.matches()) {
            return Optional.empty();
        }
        boolean stretched = found.group(1) != null;
        boolean slice = "slice".equals(found.group(4)) && !stretched;
        return Optional.of(new AspectRatio(part(found.group(2)), part(found.group(3)), stretched, slice));
    }

    /** The move that lays one box into another; both have the same y direction. */
    Affine lay(Box picture, Box room) {
        double sx = room.width() / picture.width();
        double sy = room.height() / picture.height();
        if (!stretched) {
            sx = slice ? Math.max(sx, sy) : Math.min(sx, sy);
            sy = sx;
        }
        double left = room.minX() + x * (room.width() - sx * picture.width());
        double top = room.minY() + y * (room.height() - sy * picture.height());
        return new Affine(sx, 0, 0, sy, left - sx * picture.minX(), top - sy * picture.minY());
    }

    private static double part(String word) {
        return "Min".equals(word) ? 0 : "Max".equals(word) ? 1 : 0.5;
    }
}
