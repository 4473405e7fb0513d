package dev.quoin.shop;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** All that a shop folder says; each map by name, in the file's order. */
public record Shop(
        Map<String, Lens> lenses,
        Machine machine,
        Map<String, Recipe> recipes,
        Map<String, Blank> blanks,
        Map<String, Material> materials) {
    /** What the shop knows of a blank's material; nothing but its name where the shop does not know it. */
    public Material material(Blank blank) {
        return materials.getOrDefault(blank.material(), new Material(blank.material(), "", "", ""));
    }

    /** Every process that some recipe treats. */
    public Set<String> processes() {
        Set<String> processes = new LinkedHashSet<>();
        recipes.values().forEach(recipe -> recipe.steps().forEach(step -> processes.add(step.process())));
        return processes;
    }
}
