package dev.quoin.drawing;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;

/**
 * The page of a drawing and the user units on it.
 *
 * @param page its real size, mm
 * @param viewBox the part of the drawing's plane that the page shows, user units, y down
 */
record Frame(Page page, Box viewBox) {
    double millimetresPerUnit() {
        return page.width() / viewBox.width();
    }

    /** From user units of the root into item coordinates. */
    Affine toItem() {
        double scale = millimetresPerUnit();
        return Affine.translate(-viewBox.centre().x(), -viewBox.centre().y()).then(Affine.scale(scale, -scale));
    }
}
