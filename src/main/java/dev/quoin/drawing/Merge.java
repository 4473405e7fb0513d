package dev.quoin.drawing;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the attributes of a drawing are worth: as they stand, or with the values of a row. */
final class Merge {
    /** Placeholders have no value. */
    static final Merge NONE = new Merge(Map.of());

    private final Map<SvgAttribute, String> values;

    private Merge(Map<SvgAttribute, String> values) {
        this.values = values;
    }

    /** @throws IllegalArgumentException if there is not one value for each attribute */
    static Merge of(List<SvgAttribute> attributes, List<String> values) {
        if (attributes.size() != values.size()) {
            throw new IllegalArgumentException(values.size() + " values for " + attributes.size() + " attributes");
        }
        Map<SvgAttribute, String> merged = new IdentityHashMap<>();
        for (int i = 0; i < values.size(); i++) {
            merged.put(attributes.get(i), values.get(i));
        }
        return new Merge(merged);
    }

    /** The value of an attribute; nothing where it depends on a row and none was given. */
    Optional<String> value(SvgAttribute attribute) {
        return attribute.varies()
                ? Optional.ofNullable(values.get(attribute))
                : Optional.of(attribute.value().source());
    }

    Names names(SvgElement element) {
        String classes =
                element.attribute("class").flatMap(this::value).orElse("").strip();
        return new Names(
                element.attribute("id").flatMap(this::value).orElse("").strip(),
                classes.isEmpty() ? List.of() : List.of(classes.split("\\s+")),
                element.label());
    }
}
