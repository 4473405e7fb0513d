package dev.quoin.job;

import dev.quoin.plate.StepTime;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.Step;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/** Gathers the items that have marks for a fill step of which no line is left. */
final class MissedMarks {
    private final Map<Recipe, Map<Step, SortedSet<Integer>>> missed = new LinkedHashMap<>();

    void take(Recipe recipe, Iterable<StepTime> steps) {
        for (StepTime step : steps) {
            if (!step.missed().isEmpty()) {
                missed.computeIfAbsent(recipe, made -> new LinkedHashMap<>())
                        .computeIfAbsent(step.step(), made -> new TreeSet<>())
                        .addAll(step.missed());
            }
        }
    }

    /** Tells of each step once. */
    void tell(Problems problems) {
        missed.forEach((recipe, steps) -> steps.forEach((step, items) -> problems.warning(
                recipe.place(),
                "recipe '" + recipe.name() + "', step " + step.number() + " (" + step.process()
                        + "): no line of it is left on item " + items.first()
                        + (items.size() == 1 ? "" : " and " + (items.size() - 1) + " more")
                        + ", which has marks for it",
                step.inset() > 0 ? "set inset_mm or spacing_mm lower" : "set spacing_mm lower")));
    }
}
