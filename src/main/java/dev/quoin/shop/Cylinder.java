package dev.quoin.shop;

import dev.quoin.geometry.Decimals;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A round piece, or the frustum of a cone, that turns about its axis; the axis lies along y. Its surface is level along its
 * top line, for which a tapered piece is tilted.
 *
 * @param bottom diameter at the drawing's lower edge, mm
 * @param top diameter at its upper edge, mm
 * @param height of the drawing, along the surface, mm
 */
public record Cylinder(double bottom, double top, double height) {
    private static final String NUMBER = "(\\d+(?:\\.\\d+)?)";
    private static final Pattern NAME = Pattern.compile("rotary-" + NUMBER + "(?:-" + NUMBER + ")?x" + NUMBER);

    /** The piece that a jig of this name holds; none if it is no such name. */
    public static Optional<Cylinder> named(String name) {
        Matcher parts = NAME.matcher(name);
        if (!parts.matches()) {
            return Optional.empty();
        }
        double bottom = Double.parseDouble(parts.group(1));
        double top = parts.group(2) == null ? bottom : Double.parseDouble(parts.group(2));
        return Optional.of(new Cylinder(bottom, top, Double.parseDouble(parts.group(3))));
    }

    /** How tables name what holds it: {@code rotary-60x90}, tapered {@code rotary-80-65x90}. */
    public String name() {
        return "rotary-" + Decimals.mm(bottom) + (isTapered() ? "-" + Decimals.mm(top) : "") + "x"
                + Decimals.mm(height);
    }

    /** How papers name what holds it: {@code rotary (80 to 65 mm across, 90 mm long)}. */
    public String title() {
        return "rotary (" + Decimals.mm(bottom) + (isTapered() ? " to " + Decimals.mm(top) : "") + " mm across, "
                + Decimals.mm(height) + " mm long)";
    }

    /** How papers name a jig of this name. */
    public static String title(String jig) {
        return named(jig).map(Cylinder::title).orElse(jig);
    }

    public boolean isTapered() {
        return bottom != top;
    }

    /** Half of the mean diameter, mm. */
    public double radius() {
        return (bottom + top) / 4;
    }

    /** The radius at a height above the drawing's middle, mm. */
    public double radiusAt(double y) {
        return radius() + (top - bottom) / 2 * y / height;
    }

    public double largestRadius() {
        return Math.max(bottom, top) / 2;
    }

    /** The way around at the drawing's middle, mm. */
    public double circumference() {
        return 2 * Math.PI * radius();
    }

    /** How far the axis is tilted so that the top line lies level, degrees; positive if the upper end comes up. */
    public double tilt() {
        return Math.toDegrees(Math.asin((bottom - top) / 2 / height));
    }
}
