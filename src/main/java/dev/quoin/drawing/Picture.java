package dev.quoin.drawing;

import dev.quoin.geometry.Box;
import dev.quoin.problem.Problem;
import java.util.List;

/**
 * A drawing that others show.
 *
 * @param shapes what it shows, in paint order; its item coordinates have the length of a user unit
 * @param box its page in the same coordinates, centred on the origin
 * @param problems what was found wrong with it; with an error in it, it is not shown
 */
record Picture(List<DrawnShape> shapes, Box box, List<Problem> problems) {
    boolean isFaulty() {
        return problems.stream().anyMatch(Problem::isError);
    }
}
