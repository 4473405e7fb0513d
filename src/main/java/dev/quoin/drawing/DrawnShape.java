package dev.quoin.drawing;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;

/**
 * A shape, painted or not.
 *
 * @param element the element it was drawn from
 * @param local its geometry as the element has it, in user units
 * @param toItem the move from there into item coordinates
 * @param rule the fill rule of its interior
 * @param filled whether its interior is painted
 * @param strokeOutline the area that its stroke covers, in item coordinates, dashes and joins as drawn; empty where it
 *     has none
 */
public record DrawnShape(Element element, Path local, Affine toItem, FillRule rule, boolean filled, Area strokeOutline)
        implements Drawn {
    /** The path itself, in item coordinates. */
    public Path path() {
        return local.transform(toItem);
    }

    public boolean painted() {
        return filled || !strokeOutline.isEmpty();
    }
}
