package dev.quoin.verify;

import dev.quoin.plate.Placement;
import dev.quoin.plate.Stand;
import dev.quoin.plate.Stands;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Recipe;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a plate is held to, from the run's inputs.
 *
 * @param placements every slot of its jig as it lies in the field while it stands so, by its id
 * @param stands in which ways the jig can stand
 * @param round what strips of a round piece are held to; empty for a jig of flat ones
 */
public record Fixture(
        Recipe recipe, Lens lens, Map<String, Placement> placements, Stands stands, Optional<RoundFixture> round) {
    /** Whether the run's settings let the jig stand so. */
    boolean allows(Stand stand) {
        return round.map(piece -> piece.allows(stand)).orElseGet(() -> stands.allow(stand));
    }

    /** The shapes of its pockets, by slot. */
    Map<String, Pocket> pockets() {
        Map<String, Pocket> pockets = new HashMap<>();
        placements.forEach((slot, placement) ->
                pockets.put(slot, new Pocket(placement.slot().pocket())));
        return pockets;
    }
}
