package dev.quoin.art;

import dev.quoin.drawing.Page;
import dev.quoin.order.Item;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Recipe;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A template, compiled: constant artwork is held as marks, each placeholder as an expression of its own. Merging it with
 * a row draws only what depends on the row.
 */
public final class Template {
    private final String name;
    private final Page page;
    private final Columns columns;
    private final List<Piece> pieces;

    Template(String name, Page page, Columns columns, List<Piece> pieces) {
        this.name = name;
        this.page = page;
        this.columns = columns;
        this.pieces = List.copyOf(pieces);
    }

    /** Its file's name. */
    public String name() {
        return name;
    }

    public Page page() {
        return page;
    }

    /** Whether a recipe treats every process that is known without a row; each that it does not is a problem. */
    public boolean suits(Recipe recipe, Problems problems) {
        int before = problems.errors();
        pieces.forEach(piece -> piece.check(recipe, problems));
        return problems.errors() == before;
    }

    /**
     * The artwork of an item.
     *
     * @param row where its row stands
     * @param sizes that texts must not exceed because others have no larger
     * @return nothing if there are errors
     */
    public Optional<Artwork> merge(Item item, Place row, Recipe recipe, SharedSizes sizes, Problems problems) {
        int before = problems.errors();
        Merging merging = new Merging(columns, item, row, text -> sizes.greatest(this, text), problems);
        if (problems.errors() > before) {
            return Optional.empty();
        }
        pieces.forEach(piece -> piece.draw(merging));
        Artwork artwork = merging.artwork();
        checkProcesses(artwork, row, recipe, problems);
        if (problems.errors() == before && artwork.ink(recipe).isEmpty()) {
            problems.error(row, "nothing is left to mark on " + name, "check the template and the row's values");
        }
        return problems.errors() > before ? Optional.empty() : Optional.of(artwork);
    }

    /** A process may come from a row's value. */
    private static void checkProcesses(Artwork artwork, Place row, Recipe recipe, Problems problems) {
        Set<String> told = new HashSet<>(recipe.processes());
        for (Mark mark : artwork.marks()) {
            if (told.add(mark.process())) {
                Piece.checkProcess(mark.process(), "a mark", row, recipe, problems);
            }
        }
    }
}
