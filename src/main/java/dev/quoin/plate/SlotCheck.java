package dev.quoin.plate;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Method;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.Step;
import java.util.ArrayList;
import java.util.List;

/** Whether a slot can take one item. */
public final class SlotCheck {
    private SlotCheck() {}

    /** Whether the slot is usable, and the item's ink would lie inside its pocket and in the lens's reach. */
    public static boolean holds(Placement placement, LoadedItem item, Recipe recipe, Lens lens) {
        List<Path> ink = new ArrayList<>();
        for (Step step : recipe.steps()) {
            item.marks(step)
                    .forEach(mark ->
                            ink.add(step.method() == Method.FILL ? mark.area().outline() : mark.path()));
        }
        PocketFit pocket = PocketFit.of(placement.slot().pocket());
        Box inField = ink.stream()
                .map(path -> path.transform(placement.pose()).bounds())
                .reduce(Box.EMPTY, Box::union);
        return placement.slot().usable()
                && ink.stream().allMatch(pocket::holds)
                && lens.reach().contains(inField, InkExtent.TOLERANCE);
    }
}
