package dev.quoin.shop;

import dev.quoin.drawing.Drawn;
import dev.quoin.drawing.DrawnShape;
import dev.quoin.drawing.DrawnText;
import dev.quoin.drawing.Element;
import dev.quoin.drawing.Names;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Point;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Takes the pockets out of a drawing of a jig. */
final class PocketReader {
    private static final String POCKET = "pocket";
    private static final String UNUSABLE = "unusable";
    /** How far a transform may be off, as a part of the scale: editors save six digits or so. */
    private static final double TOLERANCE = 1e-4;

    private final double mmPerUnit;
    private final Problems problems;
    private final Map<String, Place> seen = new HashMap<>();

    PocketReader(double mmPerUnit, Problems problems) {
        this.mmPerUnit = mmPerUnit;
        this.problems = problems;
    }

    /** The slots, in paint order. */
    List<Slot> slots(List<Drawn> drawn) {
        List<Slot> slots = new ArrayList<>();
        for (Drawn thing : drawn) {
            if (thing instanceof DrawnShape shape) {
                pocketOf(shape.element()).ifPresent(names -> take(shape, names, slots));
            } else if (thing instanceof DrawnText text
                    && pocketOf(text.element()).isPresent()) {
                problems.error(
                        text.element().place(),
                        "a text cannot be a pocket",
                        "take the class 'pocket' off it, or draw the pocket as a shape");
            }
        }
        return slots;
    }

    /** The names of the nearest element that is a pocket: the shape itself, its {@code use}, or its group. */
    private static Optional<Names> pocketOf(Element element) {
        return element.names().stream()
                .filter(names -> names.classes().contains(POCKET))
                .findFirst();
    }

    private void take(DrawnShape shape, Names names, List<Slot> slots) {
        Place place = shape.element().place();
        Place first = names.id().isEmpty() ? null : seen.putIfAbsent(names.id(), place);
        Box bounds = shape.local().bounds();
        if (names.id().isEmpty()) {
            problems.error(place, "a pocket without an id", "give it the name of its slot as id");
        } else if (first != null) {
            problems.error(
                    place,
                    "slot '" + names.id() + "' has a pocket on line " + first.line() + " already",
                    "give each pocket one shape, and an id of its own");
        } else if (!(bounds.width() > 0) || !(bounds.height() > 0)) {
            problems.error(place, "pocket '" + names.id() + "' has no size", "draw it as an area");
        } else if (keepsItsSize(shape.toItem(), names.id(), place)) {
            slots.add(slot(names, shape, bounds));
        }
    }

    private Slot slot(Names names, DrawnShape shape, Box bounds) {
        Point middle = bounds.centre();
        Path pocket = shape.local()
                .transform(Affine.translate(-middle.x(), -middle.y()).then(Affine.scale(mmPerUnit, -mmPerUnit)));
        double rotation = shape.toItem().rotation();
        return new Slot(
                names.id(),
                shape.toItem().apply(middle),
                rotation <= -180 ? 180 : rotation + 0.0,
                bounds.width() * mmPerUnit,
                bounds.height() * mmPerUnit,
                pocket,
                !names.classes().contains(UNUSABLE));
    }

    /** A pocket may be turned and shifted: its move is the page's scale, y turned over, then a rigid one. */
    private boolean keepsItsSize(Affine move, String slot, Place place) {
        double tolerance = TOLERANCE * mmPerUnit;
        double scale = Math.hypot(move.a(), move.b());
        String fault = "";
        if (move.determinant() > 0) {
            fault = "mirrored";
        } else if (Math.abs(move.a() * move.c() + move.b() * move.d()) > tolerance * mmPerUnit) {
            fault = "skewed";
        } else if (Math.abs(scale - mmPerUnit) > tolerance
                || Math.abs(Math.hypot(move.c(), move.d()) - mmPerUnit) > tolerance) {
            fault = "scaled";
        }
        if (!fault.isEmpty()) {
            problems.error(
                    place,
                    "pocket '" + slot + "' is " + fault + " by its transform",
                    "draw it in its real size, and only move and rotate it");
        }
        return fault.isEmpty();
    }
}
