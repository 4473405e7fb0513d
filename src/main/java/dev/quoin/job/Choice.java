package dev.quoin.job;

import dev.quoin.plate.Group;
import dev.quoin.plate.Stand;
import java.util.List;

/**
 * What is chosen for a row.
 *
 * @param sides the template of the front and, if the back is marked too, that of the back
 */
record Choice(List<ChosenTemplate> sides, Group group) {
    Choice {
        sides = List.copyOf(sides);
    }

    /** The template of the side that is up. */
    ChosenTemplate side(Stand stand) {
        return sides.get(stand.isBack() ? 1 : 0);
    }
}
