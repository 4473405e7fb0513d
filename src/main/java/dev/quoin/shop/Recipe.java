package dev.quoin.shop;

import dev.quoin.problem.Place;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The ordered steps for one material.
 *
 * @param lens the lens it was proven on; empty where none is named
 * @param material the material it is for; empty where none is named
 * @param place where it is written
 */
public record Recipe(String name, List<Step> steps, String lens, String material, Place place) {
    public Recipe {
        steps = List.copyOf(steps);
    }

    public Set<String> processes() {
        return steps.stream().map(Step::process).collect(Collectors.toUnmodifiableSet());
    }
}
