package dev.quoin.shop;

import dev.quoin.drawing.Drawn;
import dev.quoin.drawing.SvgDrawing;
import dev.quoin.drawing.VariableAttribute;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Point;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads jigs, from tables and from drawings. Slots keep the file's order. */
public final class JigReader {
    private static final List<String> REQUIRED = List.of("slot", "x_mm", "y_mm", "width_mm", "height_mm");
    private static final List<String> OPTIONAL = List.of("rotation_deg", "usable", "z_mm", "note");

    private JigReader() {}

    /**
     * A jig from a table {@code slot,x_mm,y_mm,rotation_deg,width_mm,height_mm,usable}; x and y are the pocket's centre.
     * It may also have a column {@code z_mm}: how much higher a pocket's floor lies than what the lens is set to.
     * Its own centre is that of the box around all pockets, turned as they stand, unusable ones included.
     *
     * @param file the file's name, as problems give it
     */
    public static Optional<Jig> csv(String file, byte[] content, Problems problems) {
        int before = problems.errors();
        Optional<ShopTable> table = ShopTable.open(file, content, REQUIRED, OPTIONAL, problems);
        table.ifPresent(opened -> opened.mustHaveRows("slot"));
        List<Slot> slots = table.map(opened -> opened.named("slot", JigReader::slot))
                .map(Map::values)
                .map(List::copyOf)
                .orElse(List.of());
        return problems.errors() > before ? Optional.empty() : Optional.of(jig(file, middle(slots), slots, problems));
    }

    /**
     * A jig from an SVG drawing: what {@link #fromShapes} says of what it shows. A placeholder in it is an error, since a
     * jig is the same for all rows.
     *
     * @param file the file's name, as problems give it
     */
    public static Optional<Jig> svg(String file, byte[] content, Problems problems) {
        int before = problems.errors();
        Optional<SvgDrawing> drawing = SvgDrawing.read(file, content, problems);
        List<VariableAttribute> variables =
                drawing.map(SvgDrawing::variableAttributes).orElse(List.of());
        for (VariableAttribute variable : variables) {
            problems.error(
                    variable.element().place(),
                    "a placeholder in attribute '" + variable.name() + "' of a jig, which has no row to fill it from",
                    "write the value itself");
        }
        List<Drawn> drawn = drawing.map(read -> read.draw(problems)).orElse(List.of());
        return problems.errors() > before
                ? Optional.empty()
                : drawing.flatMap(read -> fromShapes(file, drawn, read.millimetresPerUnit(), problems));
    }

    /**
     * A jig from what a drawing shows: each shape that has, or stands under an element that has, the class
     * {@code pocket} is one; its slot is that element's id. The jig's centre is the page's.
     *
     * @param file the file's name, as problems give it
     * @param mmPerUnit the scale of the drawing's page
     */
    public static Optional<Jig> fromShapes(String file, List<Drawn> drawn, double mmPerUnit, Problems problems) {
        int before = problems.errors();
        List<Slot> slots = new PocketReader(mmPerUnit, problems).slots(drawn);
        if (slots.isEmpty() && problems.errors() == before) {
            problems.error(
                    Place.of(file), "no pockets", "give each pocket's shape the class 'pocket' and its slot as id");
        }
        return problems.errors() > before ? Optional.empty() : Optional.of(jig(file, Point.ORIGIN, slots, problems));
    }

    private static Jig jig(String file, Point centre, List<Slot> slots, Problems problems) {
        SlotClashes.tell(file, slots, problems);
        return new Jig(name(file), centre, slots);
    }

    private static Slot slot(ShopRow row) {
        double width = row.number("width_mm", Range.POSITIVE);
        double height = row.number("height_mm", Range.POSITIVE);
        return new Slot(
                row.text("slot"),
                new Point(row.number("x_mm", Range.ANY), row.number("y_mm", Range.ANY)),
                row.number("rotation_deg", Range.DEGREES, 0),
                width,
                height,
                Path.of(Box.centred(width, height)),
                usable(row),
                row.number("z_mm", Range.ANY, 0));
    }

    private static boolean usable(ShopRow row) {
        return switch (row.text("usable").toLowerCase(Locale.ROOT)) {
            case "", "yes", "true", "1" -> true;
            case "no", "false", "0" -> false;
            default -> {
                row.error("usable", "'" + row.text("usable") + "' is not known", "write yes or no");
                yield true;
            }
        };
    }

    private static Point middle(List<Slot> slots) {
        return slots.stream()
                .map(slot -> slot.pose().apply(Box.centred(slot.width(), slot.height())))
                .reduce(Box.EMPTY, Box::union)
                .centre();
    }

    /** The file's name without folders and extension. */
    private static String name(String file) {
        String last = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
        int dot = last.lastIndexOf('.');
        return dot > 0 ? last.substring(0, dot) : last;
    }
}
