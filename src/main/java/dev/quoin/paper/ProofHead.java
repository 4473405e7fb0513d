package dev.quoin.paper;

import java.util.List;
import java.util.Optional;

/**
 * The top of a proof.
 *
 * @param job its name
 * @param handedIn the date as the user gave it
 * @param pieces how many are to be made
 * @param leftOut the lines of the order that are not shown because of errors
 */
public record ProofHead(String job, Optional<String> handedIn, String orderFile, int pieces, List<Integer> leftOut) {
    public ProofHead {
        leftOut = List.copyOf(leftOut);
    }
}
