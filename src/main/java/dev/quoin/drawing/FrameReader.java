package dev.quoin.drawing;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.Decimals;
import dev.quoin.problem.Problems;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the real size of a drawing's page. Units: CSS Values 3, section 6.2: 1 in = 25.4 mm = 72 pt = 6 pc = 96 px. */
final class FrameReader {
    private static final Map<String, Double> MM =
            Map.of("mm", 1.0, "cm", 10.0, "in", 25.4, "pt", 25.4 / 72, "pc", 25.4 / 6);
    private static final double MM_PER_PIXEL = 25.4 / 96;
    private static final String NUMBER = "[+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?";
    private static final Pattern LENGTH = Pattern.compile("\\s*(" + NUMBER + ")([a-zA-Z%]*)\\s*");
    private static final Pattern BETWEEN = Pattern.compile("[\\s]*[\\s,][\\s]*");
    /** How far width : height may differ from the viewBox's; editors round their sizes. */
    private static final double TOLERANCE = 0.002;

    private static final double LARGEST_MM = 10_000;
    private static final String REMEDY =
            "write a real size on the <svg> element, such as width=\"90mm\" height=\"50mm\"";

    private final SvgElement root;
    private final Problems problems;

    private FrameReader(SvgElement root, Problems problems) {
        this.root = root;
        this.problems = problems;
    }

    static Optional<Frame> read(SvgElement root, Problems problems) {
        return new FrameReader(root, problems).frame();
    }

    /** The frame of a drawing that another one scales: a user unit is a millimetre, whatever its page's size. */
    static Optional<Frame> readUnits(SvgElement root, Problems problems) {
        FrameReader reader = new FrameReader(root, problems);
        Optional<Box> box = root.attribute("viewBox").isPresent()
                ? reader.viewBox(reader.source("viewBox"))
                : reader.sizeInPixels();
        return box.map(view -> new Frame(new Page(view.width(), view.height()), view));
    }

    private Optional<Box> sizeInPixels() {
        double width = pixels("width");
        double height = pixels("height");
        if (width > 0 && height > 0) {
            return Optional.of(new Box(0, 0, width, height));
        }
        problems.error(root.place(), "<svg> has neither a viewBox nor a size", "give it a viewBox");
        return Optional.empty();
    }

    private double pixels(String name) {
        Matcher length = LENGTH.matcher(source(name));
        if (!length.matches()) {
            return 0;
        }
        String unit = length.group(2);
        double perUnit = unit.isEmpty() || unit.equals("px") ? 1 : MM.getOrDefault(unit, 0.0) / MM_PER_PIXEL;
        return Double.parseDouble(length.group(1)) * perUnit;
    }

    private Optional<Frame> frame() {
        OptionalDouble width = length("width");
        OptionalDouble height = length("height");
        if (width.isEmpty() || height.isEmpty()) {
            return Optional.empty();
        }
        Page page = new Page(width.getAsDouble(), height.getAsDouble());
        if (root.attribute("viewBox").isEmpty()) {
            return Optional.of(
                    new Frame(page, new Box(0, 0, page.width() / MM_PER_PIXEL, page.height() / MM_PER_PIXEL)));
        }
        return viewBox(source("viewBox")).map(box -> new Frame(page, box)).filter(this::isProportional);
    }

    private String source(String name) {
        return root.attribute(name).map(a -> a.value().source()).orElse("");
    }

    private OptionalDouble length(String name) {
        String value = source(name);
        Matcher length = LENGTH.matcher(value);
        if (!length.matches() || !MM.containsKey(length.group(2))) {
            String what = value.isBlank() ? "no " + name : name + "=\"" + value + "\"";
            problems.error(root.place(), "the drawing has no real size: <svg> has " + what, REMEDY);
            return OptionalDouble.empty();
        }
        double mm = Double.parseDouble(length.group(1)) * MM.get(length.group(2));
        if (!(mm > 0 && mm <= LARGEST_MM)) {
            problems.error(root.place(), "the page's " + name + " of " + value + " cannot be", REMEDY);
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(mm);
    }

    private Optional<Box> viewBox(String value) {
        String[] words = BETWEEN.split(value.strip());
        if (words.length == 4) {
            double[] v = new double[4];
            for (int i = 0; i < 4; i++) {
                v[i] = words[i].matches(NUMBER) ? Double.parseDouble(words[i]) : Double.NaN;
            }
            if (v[2] > 0 && v[3] > 0 && Double.isFinite(v[0] + v[1] + v[2] + v[3])) {
                return Optional.of(new Box(v[0], v[1], v[0] + v[2], v[1] + v[3]));
            }
        }
        problems.error(
                root.place(),
                "viewBox=\"" + value + "\" is not four numbers with a width and a height above 0",
                "write it as viewBox=\"0 0 90 50\"");
        return Optional.empty();
    }

    private boolean isProportional(Frame frame) {
        double x = frame.page().width() / frame.viewBox().width();
        double y = frame.page().height() / frame.viewBox().height();
        boolean same = Math.abs(x / y - 1) <= TOLERANCE;
        if (!same) {
            problems.error(
                    root.place(),
                    "the page of " + Decimals.mm(frame.page().width()) + " x "
                            + Decimals.mm(frame.page().height()) + " mm and viewBox=\"" + source("viewBox")
                            + "\" differ in proportion",
                    "make one user unit as wide as it is high, since nothing is stretched to fit");
        }
        return same;
    }
}
