package dev.quoin.paper;

import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;

/**
 * What a step puts on a piece.
 *
 * @param path in item coordinates, mm, y up
 * @param rule of the area, where it is filled
 */
public record ProofInk(Kind kind, Path path, FillRule rule) {
    /** How it looks on the piece. */
    public enum Kind {
        AREA,
        LINE,
        CUT
    }
}
