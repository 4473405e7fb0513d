package dev.quoin.plate;

import dev.quoin.art.Artwork;
import dev.quoin.art.Mark;
import dev.quoin.geometry.Area;
import dev.quoin.shop.Method;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.Step;
import dev.quoin.toolpath.Thickness;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Finds the thinnest part that each fill step covers, over many items. Constant artwork is looked at part by part, once;
 * what is an item's own is measured as a whole, and only the thinnest of it part by part.
 */
final class FinestDetail {
    /** Constant artwork is one object for all items; so many of its marks are remembered to be measured. */
    private static final int MOST_REMEMBERED = 1_000;

    private final Recipe recipe;
    private final Map<Integer, Set<Mark>> constant = new HashMap<>();
    private final Map<Integer, Thin> thinnest = new HashMap<>();

    /** A mark of one item, and its mean thickness, mm. */
    private record Thin(Area area, double mean) {}

    FinestDetail(Recipe recipe) {
        this.recipe = recipe;
    }

    /** Takes the artwork of an item. */
    void add(Artwork artwork) {
        for (Step step : recipe.steps()) {
            if (step.method() == Method.FILL) {
                artwork.marks().stream()
                        .filter(mark -> mark.process().equals(step.process()))
                        .forEach(mark -> add(step.number(), mark));
            }
        }
    }

    private void add(int step, Mark mark) {
        Set<Mark> known = constant.computeIfAbsent(step, made -> Collections.newSetFromMap(new IdentityHashMap<>()));
        if (mark.constant() && (known.size() < MOST_REMEMBERED || known.contains(mark))) {
            known.add(mark);
        } else if (!mark.area().outline().isEmpty()) {
            Thin thin = new Thin(mark.area(), Thickness.mean(mark.area()));
            thinnest.merge(step, thin, (a, b) -> b.mean() < a.mean() ? b : a);
        }
    }

    /** The width of the thinnest part, mm; empty if none is thinner than {@code enough}. */
    OptionalDouble of(Step step, double enough) {
        List<Area> areas = new ArrayList<>();
        constant.getOrDefault(step.number(), Set.of()).forEach(mark -> areas.add(mark.area()));
        Optional.ofNullable(thinnest.get(step.number())).ifPresent(thin -> areas.add(thin.area()));
        return areas.stream()
                .map(area -> Thickness.thinnest(area, enough))
                .flatMapToDouble(OptionalDouble::stream)
                .min();
    }
}
