package dev.quoin.art;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.Path;

/**
 * One area or path of the artwork, mm.
 *
 * @param process how it is to be treated
 * @param path what a follow step follows
 * @param area what a fill step covers, the stroke's outline included
 * @param constant whether it is one object, the same for all items of its template
 */
public record Mark(String process, Path path, Area area, boolean constant) {
    /** A mark of one item. */
    public Mark(String process, Path path, Area area) {
        this(process, path, area, false);
    }

    public Mark transform(Affine move) {
        boolean same = area.outline() == path;
        Path moved = path.transform(move);
        return new Mark(process, moved, same ? new Area(moved, area.rule()) : area.transform(move), constant);
    }
}
