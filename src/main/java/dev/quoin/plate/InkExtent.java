package dev.quoin.plate;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How far the ink of a group's items reaches from the item's centre, in each of the directions in which the jig's slots
 * are turned. Reach is decided with it for the whole group: a slot that some item's ink would leave the field from holds none.
 */
final class InkExtent {
    /** How far ink may overstep the edge of the field by the rounding of numbers, mm. */
    static final double TOLERANCE = 1e-3;

    /** Constant artwork is one object for all items; so many of its paths are remembered as measured. */
    private static final int MOST_REMEMBERED = 1_000;

    private final Map<Affine, Box> boxes = new LinkedHashMap<>();
    private final Set<Path> measured = Collections.newSetFromMap(new IdentityHashMap<>());

    InkExtent(Collection<Placement> placements) {
        placements.forEach(placement -> boxes.put(placement.turn(), Box.EMPTY));
    }

    /** Takes the ink of an item, in item coordinates. */
    void add(List<Path> ink) {
        List<Path> fresh = new ArrayList<>();
        for (Path path : ink) {
            if (!measured.contains(path)) {
                fresh.add(path);
                if (measured.size() < MOST_REMEMBERED) {
                    measured.add(path);
                }
            }
        }
        boxes.replaceAll((turn, box) ->
                fresh.stream().map(path -> path.transform(turn).bounds()).reduce(box, Box::union));
    }

    /** The box around all ink of the group, if it lay at this placement; field coordinates, mm. */
    Box at(Placement placement) {
        Box box = boxes.get(placement.turn());
        return Affine.translate(placement.centre().x(), placement.centre().y()).apply(box);
    }
}
