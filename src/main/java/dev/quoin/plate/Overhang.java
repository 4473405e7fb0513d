package dev.quoin.plate;

import dev.quoin.geometry.Box;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How far ink stands out of a pocket, where it does most.
 *
 * @param mm above 0
 * @param edge of the pocket, as the drawing has it
 */
public record Overhang(double mm, Edge edge) {
    /** The edges of a pocket, seen with the drawing upright. */
    public enum Edge {
        LEFT,
        RIGHT,
        TOP,
        BOTTOM
    }

    /** Of ink in this box over a pocket of that box, item coordinates, mm; nothing where it lies inside. */
    static Optional<Overhang> of(Box ink, Box pocket) {
        return Stream.of(
                        new Overhang(pocket.minX() - ink.minX(), Edge.LEFT),
                        new Overhang(ink.maxX() - pocket.maxX(), Edge.RIGHT),
                        new Overhang(ink.maxY() - pocket.maxY(), Edge.TOP),
                        new Overhang(pocket.minY() - ink.minY(), Edge.BOTTOM))
                .filter(overhang -> overhang.mm() > PocketFit.TOLERANCE)
                .max(Comparator.comparingDouble(Overhang::mm));
    }
}
