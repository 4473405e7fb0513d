package dev.quoin.job;

import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Placement;
import dev.quoin.shop.Blank;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.Step;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Items that are marked again in one loading of the jig.
 *
 * @param shop of the run's section
 * @param recipe of the items, all its steps
 * @param steps those that are marked again
 * @param items with their marks, each at its place in the field
 * @param rows what {@code items.csv} says of them, in the same order
 * @param placements every slot of the jig as it lies in the field, by its id
 */
record ReprintedPlate(
        RunShop shop,
        Recipe recipe,
        List<Step> steps,
        Optional<Blank> blank,
        Lens lens,
        String jig,
        List<LoadedItem> items,
        List<RunItem> rows,
        Map<String, Placement> placements) {
    /** The same with other items. */
    ReprintedPlate holding(List<LoadedItem> newItems, List<RunItem> newRows) {
        return new ReprintedPlate(shop, recipe, steps, blank, lens, jig, newItems, newRows, placements);
    }

    /** The same with some steps only. */
    ReprintedPlate only(List<Step> newSteps) {
        return new ReprintedPlate(shop, recipe, newSteps, blank, lens, jig, items, rows, placements);
    }

    /** The recipe as far as it is marked again. */
    Recipe repeated() {
        return new Recipe(recipe.name(), steps, recipe.lens(), recipe.material(), recipe.place());
    }

    boolean repeatsAll() {
        return steps.size() == recipe.steps().size();
    }

    /** The plates that its items were prepared for. */
    SortedSet<Integer> plates() {
        SortedSet<Integer> plates = new TreeSet<>();
        rows.forEach(row -> plates.add(row.plate()));
        return plates;
    }
}
