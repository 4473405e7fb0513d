package dev.quoin.lettering;

import dev.quoin.geometry.Point;

/** A space that blocks of text are fitted into, mm. */
interface FitSpace {
    /** How far ink keeps from the edge, mm, so that rounding never carries it over. */
    double ROUNDING = 1e-9;

    /** The largest font size, mm, at which the block's ink lies inside; 0 where there is none. */
    double largest(TextBlock block, double squeeze);

    /** Where the block's origin stands at a size at which it fits. */
    Point origin(TextBlock block, double squeeze, double size);

    /** Whether only the block's width, top and bottom decide whether it fits. */
    boolean isRectangle();
}
