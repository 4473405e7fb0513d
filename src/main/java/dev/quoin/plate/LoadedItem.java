package dev.quoin.plate;

import dev.quoin.art.Artwork;
import dev.quoin.art.Mark;
import dev.quoin.art.MarkedText;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import dev.quoin.shop.Method;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.Step;
import java.util.HashMap;
import java.util.IdentityHashMap;
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
                            .filter(mark -> shows(mark, step))
                            .toList());
        }
        return new LoadedItem(item, placement, marks, artwork.texts());
    }

    /** Of a shape that is cut by a clip path, the edge may be cut away and its interior left, or the other way round. */
    private static boolean shows(Mark mark, Step step) {
        return !(step.method() == Method.FOLLOW ? mark.path() : mark.area().outline()).isEmpty();
    }

    /** Of an item on a round piece, what lies in a strip, as it is seen from above. */
    public LoadedItem showing(Wrap wrap) {
        Map<Integer, List<Mark>> seen = new HashMap<>();
        marks.forEach((step, all) -> seen.put(
                step,
                all.stream()
                        .map(wrap::show)
                        .filter(mark -> !mark.path().isEmpty() || !mark.area().isEmpty())
                        .toList()));
        return new LoadedItem(item, placement, seen, texts);
    }

    /** Whether any step marks it. */
    public boolean isMarked() {
        return marks.values().stream().anyMatch(of -> !of.isEmpty());
    }

    /** The same item elsewhere. */
    public LoadedItem movedTo(Placement other) {
        return new LoadedItem(item, other, marks, texts);
    }

    /**
     * The same item with a step's marks replaced by the lines that fill them.
     *
     * @param lines as they lie in the field, around the item's centre
     */
    LoadedItem hatched(Step step, List<Path> lines) {
        Affine back = placement.turn().inverse();
        Map<Integer, List<Mark>> lined = new HashMap<>(marks);
        Map<Path, Path> known = new IdentityHashMap<>();
        lined.put(
                step.number(),
                lines.stream()
                        .map(path -> known.computeIfAbsent(path, one -> one.transform(back)))
                        .map(path -> new Mark(step.process(), path, new Area(path, FillRule.NON_ZERO)))
                        .toList());
        return new LoadedItem(item, placement, lined, texts);
    }

    /** What a step treats. */
    public List<Mark> marks(Step step) {
        return marks.getOrDefault(step.number(), List.of());
    }
}
