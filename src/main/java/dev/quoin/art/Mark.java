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
 */
public record Mark(String process, Path path, Area area) {
    public Mark transform(Affine move) {
        boolean same = area.outline() == path;
        Path moved = path.transform(move);
        return new Mark(process, moved, same ? new Area(moved, area.rule()) : area.transform(move));
    }
}
