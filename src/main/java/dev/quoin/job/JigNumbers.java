package dev.quoin.job;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Pin;
import dev.quoin.shop.PocketShape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what the user writes of a jig that is to be made. */
public final class JigNumbers {
    private static final String SIZE = "(\\d{1,4}(?:\\.\\d+)?)";
    private static final Pattern CIRCLE = Pattern.compile("circle:" + SIZE);
    private static final Pattern RECTANGLE = Pattern.compile("rect:" + SIZE + "x" + SIZE + "(?::" + SIZE + ")?");

    private JigNumbers() {}

    /** {@code circle:32} or {@code rect:50x25} or, with a radius of the corners, {@code rect:50x25:3}. */
    public static Optional<PocketShape> pocket(String text, Problems problems) {
        Optional<PocketShape> shape = shape(text.strip());
        if (shape.isEmpty()) {
            problems.error(
                    Place.of("--pocket"),
                    "'" + text + "' is no pocket",
                    "write circle:32 or rect:50x25, or rect:50x25:3 for corners rounded by 3 mm");
        }
        return shape;
    }

    private static Optional<PocketShape> shape(String text) {
        Matcher circle = CIRCLE.matcher(text);
        if (circle.matches()) {
            double diameter = Double.parseDouble(circle.group(1));
            return Optional.of(new PocketShape(true, diameter, diameter, 0)).filter(made -> made.width() > 0);
        }
        Matcher rectangle = RECTANGLE.matcher(text);
        if (!rectangle.matches()) {
            return Optional.empty();
        }
        double corner = rectangle.group(3) == null ? 0 : Double.parseDouble(rectangle.group(3));
        return Optional.of(new PocketShape(
                        false, Double.parseDouble(rectangle.group(1)), Double.parseDouble(rectangle.group(2)), corner))
                .filter(made -> Math.min(made.width(), made.height()) > 0)
                .filter(made -> 2 * corner <= Math.min(made.width(), made.height()));
    }

    /** {@code X,Y,DIAMETER} of each pin, with semicolons between. */
    public static List<Pin> pins(String text, Problems problems) {
        List<Pin> pins = new ArrayList<>();
        for (String one : text.isBlank() ? new String[0] : text.split(";")) {
            Optional<List<Double>> numbers = Numbers.read(one, 3).filter(read -> read.get(2) > 0);
            numbers.ifPresent(read -> pins.add(new Pin(read.get(0), read.get(1), read.get(2))));
            if (numbers.isEmpty()) {
                problems.error(
                        Place.of("--pins"),
                        "'" + one.strip() + "' is no pin",
                        "write x, y and diameter in mm, from the jig's centre, such as -60,0,4; 60,0,4");
            }
        }
        return pins;
    }
}
