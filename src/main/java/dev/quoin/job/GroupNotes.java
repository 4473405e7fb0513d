package dev.quoin.job;

import dev.quoin.plate.Group;
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
    List<String> of(Group group) {
        List<String> notes = new ArrayList<>();
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
