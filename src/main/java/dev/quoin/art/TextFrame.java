package dev.quoin.art;

import dev.quoin.geometry.Affine;

/**
 * A text's own frame: mm, x along its lines, y up.
 *
 * @param scale mm to a user unit of the text
 * @param toItem the move from the frame into item coordinates
 */
record TextFrame(double scale, Affine toItem) {
    /** The frame of a text whose user units (y down) are moved to item coordinates so. */
    static TextFrame of(Affine unitsToItem) {
        double scale = Math.sqrt(Math.abs(unitsToItem.determinant()));
        return new TextFrame(scale, Affine.scale(1 / scale, -1 / scale).then(unitsToItem));
    }
}
