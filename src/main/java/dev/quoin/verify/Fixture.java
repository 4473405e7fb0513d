package dev.quoin.verify;

import dev.quoin.plate.Placement;
import dev.quoin.plate.Stands;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Recipe;
import java.util.HashMap;
import java.util.Map;

/**
 * What a plate is held to, from the run's inputs.
 *
 * @param placements every slot of its jig as it lies in the field while it stands so, by its id
 * @param stands in which ways the jig can stand
 */
public record Fixture(Recipe recipe, Lens lens, Map<String, Placement> placements, Stands stands) {
    /** The shapes of its pockets, by slot. */
    Map<String, Pocket> pockets() {
        Map<String, Pocket> pockets = new HashMap<>();
        placements.forEach((slot, placement) ->
                pockets.put(slot, new Pocket(placement.slot().pocket())));
        return pockets;
    }
}
