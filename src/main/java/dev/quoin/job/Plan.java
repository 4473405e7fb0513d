package dev.quoin.job;

import dev.quoin.order.Items;
import dev.quoin.plate.Group;
import dev.quoin.plate.Placement;
import dev.quoin.plate.Plate;
import dev.quoin.plate.SlotState;
import java.util.List;
import java.util.Map;

/**
 * The plates of a run.
 *
 * @param slots what each slot is good for, by group
 * @param leftOut the indexes of rows that are on no plate because of errors
 * @param sharing the sizes that texts share
 * @param items all that are on the plates or left out, those that fill a plate included
 * @param spoilage the share of the pieces that is expected to fail; 0 where none is given
 */
record Plan(
        List<Plate> plates,
        Map<Group, Map<Placement, SlotState>> slots,
        List<Integer> leftOut,
        Sharing sharing,
        double spoilage,
        Items items) {}
