package dev.quoin.art;

import dev.quoin.drawing.Element;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Recipe;

/** A piece with {@code data-when}: drawn unless the condition gives nothing, or {@code false}. */
record ConditionalPiece(Element element, TextSource condition, Piece piece) implements Piece {
    @Override
    public void draw(Merging row) {
        row.text(condition, element)
                .map(String::strip)
                .filter(value -> !value.isEmpty() && !value.equals("false"))
                .ifPresent(value -> piece.draw(row));
    }

    @Override
    public void check(Recipe recipe, Problems problems) {
        piece.check(recipe, problems);
    }
}
