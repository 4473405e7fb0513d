package dev.quoin.drawing;

import dev.quoin.problem.Place;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** An element as the file has it: not merged, and never changed once the file is read. */
final class SvgElement implements SvgContent {
    private final int index;
    private final String tag;
    private final Place place;
    private final Optional<SvgElement> parent;
    private final List<SvgAttribute> attributes;
    private final String label;
    private final List<SvgContent> content = new ArrayList<>();

    SvgElement(
            int index,
            String tag,
            Place place,
            Optional<SvgElement> parent,
            List<SvgAttribute> attributes,
            String label) {
        this.index = index;
        this.tag = tag;
        this.place = place;
        this.parent = parent;
        this.attributes = attributes;
        this.label = label;
    }

    void add(SvgContent child) {
        content.add(child);
    }

    /** Its number in document order, from 0. */
    int index() {
        return index;
    }

    String tag() {
        return tag;
    }

    Place place() {
        return place;
    }

    Optional<SvgElement> parent() {
        return parent;
    }

    List<SvgAttribute> attributes() {
        return attributes;
    }

    List<SvgContent> content() {
        return Collections.unmodifiableList(content);
    }

    List<SvgElement> children() {
        return content.stream()
                .filter(SvgElement.class::isInstance)
                .map(SvgElement.class::cast)
                .toList();
    }

    /** The element and all below it, in document order. */
    void forEach(Consumer<SvgElement> visitor) {
        visitor.accept(this);
        for (SvgContent child : content) {
            if (child instanceof SvgElement element) {
                element.forEach(visitor);
            }
        }
    }

    /** An attribute of SVG's own, by name. */
    Optional<SvgAttribute> attribute(String name) {
        return attributes.stream()
                .filter(a -> a.namespace().isEmpty() && a.name().equals(name))
                .findFirst();
    }

    /** What an editor shows as its name; empty where it has none. */
    String label() {
        return label;
    }

    /** The reference of a {@code use} and its like: {@code href}, or else {@code xlink:href}. */
    Optional<SvgAttribute> href() {
        return attribute("href")
                .or(() -> attributes.stream()
                        .filter(a -> a.localName().equals("href"))
                        .findFirst());
    }

    String id() {
        return attribute("id").map(id -> id.value().source()).orElse("");
    }

    String describe() {
        return id().isEmpty() ? "<" + tag + ">" : "<" + tag + " id=\"" + id() + "\">";
    }
}
