package dev.quoin.art;

import dev.quoin.drawing.Element;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Recipe;

/** A shape that is the same for all rows. */
record FixedPiece(Element element, Mark mark) implements Piece {
    @Override
    public void draw(Merging row) {
        row.add(mark);
    }

    @Override
    public void check(Recipe recipe, Problems problems) {
        Piece.checkProcess(mark.process(), element.describe(), element.place(), recipe, problems);
    }
}
