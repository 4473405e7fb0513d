package dev.quoin.art;

import dev.quoin.geometry.Path;
import dev.quoin.shop.Method;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * An item's artwork.
 *
 * @param marks in paint order, in item coordinates: mm, the origin at the item's centre, x right, y up
 * @param texts what its texts say, in paint order, and how each was set
 * @param codes what its codes hold, in paint order
 * @param sizes of texts that share theirs with other items
 * @param uses what was asked of the row
 */
public record Artwork(
        List<Mark> marks, List<MarkedText> texts, List<MarkedCode> codes, List<SharedSize> sizes, Uses uses) {
    public static final Artwork EMPTY = new Artwork(List.of(), List.of(), List.of(), List.of(), Uses.NOTHING);

    public Artwork {
        marks = List.copyOf(marks);
        texts = List.copyOf(texts);
        codes = List.copyOf(codes);
        sizes = List.copyOf(sizes);
    }

    /** The outlines of all that a recipe puts on the item: areas where it fills, paths where it follows. */
    public List<Path> ink(Recipe recipe) {
        List<Path> ink = new ArrayList<>();
        for (Step step : recipe.steps()) {
            for (Mark mark : marks) {
                if (mark.process().equals(step.process())) {
                    ink.add(step.method() == Method.FILL ? mark.area().outline() : mark.path());
                }
            }
        }
        return ink;
    }
}
