package dev.quoin.art;

import dev.quoin.problem.Place;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;

/** The least sizes so far of texts that share theirs; items merged with these keep to them. */
public final class SharedSizes {
    private final Map<Template, Map<Place, Double>> least = new HashMap<>();

    /** Sizes that nothing has been taken into. */
    public static SharedSizes none() {
        return new SharedSizes();
    }

    /** The same sizes, to take more into. */
    public SharedSizes copy() {
        SharedSizes copy = new SharedSizes();
        least.forEach((template, sizes) -> copy.least.put(template, new HashMap<>(sizes)));
        return copy;
    }

    /** Takes the sizes of an item that are shared so. */
    public void take(Template template, Artwork artwork, SameSize with) {
        for (SharedSize size : artwork.sizes()) {
            if (size.with() == with) {
                least.computeIfAbsent(template, made -> new HashMap<>())
                        .merge(size.text(), size.capHeight(), Math::min);
            }
        }
    }

    /** The greatest cap height that a text may have, mm; empty where it shares none. */
    OptionalDouble greatest(Template template, Place text) {
        Double size = least.getOrDefault(template, Map.of()).get(text);
        return size == null ? OptionalDouble.empty() : OptionalDouble.of(size);
    }
}
