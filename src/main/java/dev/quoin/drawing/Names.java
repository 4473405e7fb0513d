package dev.quoin.drawing;

import java.util.List;

/**
 * What an element is called in its file.
 *
 * @param id its {@code id}; empty where it has none
 * @param classes the words of its {@code class}, in order
 * @param label what an editor shows as its name, such as a layer's: an attribute {@code label} that is not of SVG's own;
 *     empty where it has none
 */
public record Names(String id, List<String> classes, String label) {
    public Names {
        classes = List.copyOf(classes);
    }

    /** The names of an element without a label. */
    public Names(String id, List<String> classes) {
        this(id, classes, "");
    }
}
