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
 * @param conditions the elements above it that have a {@code data-when}, the nearest first
 */
public record Element(
        String tag, Place place, List<Names> names, Map<String, VariableText> data, List<Element> conditions) {
    /** An element that stands under no condition. */
    public Element(String tag, Place place, List<Names> names, Map<String, VariableText> data) {
        this(tag, place, names, data, List.of());
    }

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
