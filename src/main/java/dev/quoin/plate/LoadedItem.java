package dev.quoin.plate;

import dev.quoin.art.Artwork;
import dev.quoin.art.Mark;
import dev.quoin.art.MarkedText;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.Step;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * An item on a plate, with what is to be marked on it.
 *
 * @param item the item's number
 * @param marks for each step that has any, by its number, in paint order; in item coordinates, mm
 * @param texts what its texts say; empty where that is not known
 */
public record LoadedItem(int item, Placement placement, Map<Integer, List<Mark>> marks, List<MarkedText> texts) {
    /** An item with the artwork that a recipe is to treat. */
    public static LoadedItem of(int item, Placement placement, Artwork artwork, Recipe recipe) {
        Map<Integer, List<Mark>> marks = new HashMap<>();
        for (Step step : recipe.steps()) {
            marks.put(
                    step.number(),
                    artwork.marks().stream()
                            .filter(mark -> mark.process().equals(step.process()))
                            .toList());
        }
        return new LoadedItem(item, placement, marks, artwork.texts());
    }

    /** The same item elsewhere. */
    public LoadedItem movedTo(Placement other) {
        return new LoadedItem(item, other, marks, texts);
    }

    /** What a step treats. */
    public List<Mark> marks(Step step) {
        return marks.getOrDefault(step.number(), List.of());
    }
}
