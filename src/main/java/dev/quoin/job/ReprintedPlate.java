package dev.quoin.job;

import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Placement;
import dev.quoin.plate.Stand;
import dev.quoin.shop.Blank;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.Step;
import java.io.IOException;
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
 * @param parts in working order; at least one
 * @param rows what {@code items.csv} says of the items, in the order of loading
 */
record ReprintedPlate(
        RunShop shop,
        Recipe recipe,
        List<Step> steps,
        Optional<Blank> blank,
        Lens lens,
        String jig,
        List<ReprintedPart> parts,
        List<RunItem> rows) {
    /** The same with other items. */
    ReprintedPlate holding(List<ReprintedPart> newParts, List<RunItem> newRows) {
        return new ReprintedPlate(shop, recipe, steps, blank, lens, jig, newParts, newRows);
    }

    /** The same with some steps only. */
    ReprintedPlate only(List<Step> newSteps) {
        return new ReprintedPlate(shop, recipe, newSteps, blank, lens, jig, parts, rows);
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

    /** The numbers of its items, in the order of loading. */
    List<Integer> items() {
        return rows.stream().map(RunItem::number).toList();
    }

    /** The slot in which an item is marked again. */
    String slotOf(int item) {
        return parts.stream()
                .flatMap(part -> part.items().stream())
                .filter(one -> one.item() == item)
                .map(LoadedItem::placement)
                .findFirst()
                .orElseThrow()
                .slot()
                .id();
    }

    /** Every slot of the jig as it lies in the field when it is loaded, by its id. */
    Map<String, Placement> placements() throws IOException {
        return shop.placements(jig, Stand.LOADED);
    }
}
