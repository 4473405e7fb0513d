package dev.quoin.plate;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import java.util.List;

/** Whether ink lies inside a pocket of a given shape. The edge may be touched, and overstepped by 0.01 mm. */
interface PocketFit {
    double TOLERANCE = 0.01;

    /** Whether all of it does; item coordinates, mm. */
    boolean holds(Path ink);

    /** For a pocket's outline, mm. A rectangle needs no more than boxes. */
    static PocketFit of(Path outline) {
        Box bounds = outline.bounds();
        return isRectangle(outline, bounds)
                ? ink -> bounds.contains(ink.bounds(), TOLERANCE)
                : new ShapedPocketFit(outline);
    }

    private static boolean isRectangle(Path outline, Box bounds) {
        List<Polyline> pieces = outline.flatten(ShapedPocketFit.FLATNESS);
        return pieces.size() == 1
                && pieces.get(0).size() == 4
                && Math.abs(Math.abs(pieces.get(0).signedArea()) - bounds.width() * bounds.height()) < 1e-9;
    }
}
