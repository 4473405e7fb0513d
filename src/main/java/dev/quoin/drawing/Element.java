package dev.quoin.drawing;

import dev.quoin.problem.Place;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which element of the file something was drawn from.
 *
 * @param tag its local name, such as {@code rect}
 * @param place where its start tag stands
 * @param names its own names first, then those of the elements above it, to the root; through a {@code use} the path
 *     leads by the {@code use} itself
 * @param data its {@code data-*} attributes by name without {@code data-}, placeholders unmerged
 */
public record Element(String tag, Place place, List<Names> names, Map<String, VariableText> data) {
    public String id() {
        return names.get(0).id();
    }

    /** An attribute {@code data-NAME}. */
    public Optional<VariableText> data(String name) {
        return Optional.ofNullable(data.get(name));
    }

    /** How a message names it: {@code <rect id="hole">}. */
    public String describe() {
        return id().isEmpty() ? "<" + tag + ">" : "<" + tag + " id=\"" + id() + "\">";
    }
}
