package dev.quoin.art;

import dev.quoin.problem.Problems;
import dev.quoin.shop.Recipe;

/**
 * What an attribute with placeholders touches: drawn anew for each set of their values.
 *
 * @param index its place among what is drawn anew
 */
record RedrawnPiece(Redrawing redrawing, int index) implements Piece {
    @Override
    public void draw(Merging row) {
        redrawing.pieces(row, index).forEach(piece -> piece.draw(row));
    }

    @Override
    public void check(Recipe recipe, Problems problems) {
        // What it is made of is known only with a row's values; Template#suits is asked again for each.
    }
}
