package dev.quoin.job;

import dev.quoin.geometry.Decimals;
import dev.quoin.plate.Group;
import dev.quoin.shop.Cylinder;
import dev.quoin.shop.Method;
import dev.quoin.shop.Pattern;
import dev.quoin.shop.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * What the operator should know of a group before it starts.
 *
 * @param hatched whether the plate files hold the lines that fill areas
 */
record GroupNotes(boolean hatched) {
    private static List<String> of(Cylinder piece) {
        List<String> notes = new ArrayList<>();
        notes.add(
                "One round piece a load, its axis along the field's upright direction, the drawing's middle on top: set the"
                        + " focus on its top line");
        if (piece.isTapered()) {
            double bottom = piece.bottom() / 2 / piece.radius();
            double top = piece.top() / 2 / piece.radius();
            notes.add("Tilt the axis by " + Decimals.text(Math.abs(piece.tilt()), 2) + " degrees, the drawing's "
                    + (piece.tilt() > 0 ? "upper" : "lower") + " end up, so that the top line lies level");
            notes.add("The piece tapers from " + Decimals.mm(piece.bottom()) + " to " + Decimals.mm(piece.top())
                    + " mm, and the drawing's width with it: " + Decimals.text(bottom, 3)
                    + " times at its lower edge, " + Decimals.text(top, 3) + " times at its upper edge");
        }
        return notes;
    }

    List<String> of(Group group) {
        List<String> notes = new ArrayList<>();
        group.jig().round().ifPresent(piece -> notes.addAll(of(piece)));
        if (group.recipe().name().equals(Swatches.RECIPE)) {
            notes.add("A settings trial: one piece, on which all items are marked; it stays where it lies throughout");
        }
        for (Step step : group.recipe().steps()) {
            if (step.method() == Method.FILL && step.pattern() == Pattern.REGIONS) {
                notes.add("Step " + step.number() + " (" + step.process()
                        + ") finishes each region before the next: fewer jumps, but seams may show where regions meet");
            }
        }
        if (hatched && group.recipe().steps().stream().anyMatch(step -> step.method() == Method.FILL)) {
            notes.add("The files hold the lines that fill each area, every pass in turn:"
                    + " mark the fill steps as lines, once, and let the software fill nothing");
        }
        return notes;
    }
}
