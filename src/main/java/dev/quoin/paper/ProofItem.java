package dev.quoin.paper;

import dev.quoin.geometry.Path;
import java.util.List;

/**
 * A piece of a proof, or several that look alike.
 *
 * @param first its number
 * @param pieces how many look like it: their numbers follow the first
 * @param line of the order's file on which its row starts
 * @param typed the row's values as they stand in the file
 * @param blank what it is made from; empty where no blank is named
 * @param outline of the blank around the origin, mm, y up
 * @param colour of the blank: {@code #rrggbb}, or empty
 * @param ink in the order of the steps
 * @param flags what to look at, in words
 * @param back whether it is the back of the piece
 */
public record ProofItem(
        int first,
        int pieces,
        int line,
        List<Typed> typed,
        String blank,
        Path outline,
        String colour,
        List<ProofInk> ink,
        List<String> flags,
        boolean back) {
    public ProofItem {
        typed = List.copyOf(typed);
        ink = List.copyOf(ink);
        flags = List.copyOf(flags);
    }

    /** A value under its column's name. */
    public record Typed(String column, String value) {}
}
