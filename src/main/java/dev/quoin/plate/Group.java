package dev.quoin.plate;

import dev.quoin.shop.Blank;
import dev.quoin.shop.Jig;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Recipe;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What items must have in common to share a plate.
 *
 * @param blank empty where the job names none
 * @param values the items' values in the columns of {@code --group-by}, in that order
 */
public record Group(Recipe recipe, Optional<Blank> blank, Jig jig, Lens lens, List<String> values) {
    public Group {
        values = List.copyOf(values);
    }

    /** The same group through another lens. */
    Group through(Lens other) {
        return new Group(recipe, blank, jig, other, values);
    }

    /** How a message names it. */
    public String describe() {
        String what = "recipe " + recipe.name()
                + blank.map(one -> ", blank " + one.name()).orElse("") + ", jig " + jig.name();
        return values.isEmpty()
                ? what
                : what + ", "
                        + values.stream()
                                .map(value -> value.isEmpty() ? "(empty)" : value)
                                .collect(Collectors.joining(", "));
    }
}
