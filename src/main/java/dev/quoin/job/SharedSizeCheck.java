package dev.quoin.job;

import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Part;
import dev.quoin.plate.Plate;
import dev.quoin.plate.SlotCheck;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.io.IOException;

/**
 * Makes sure that items still lie in their pockets and in reach once their texts have taken the sizes they share: a smaller
 * text may need fewer lines, and then stands elsewhere than the one that was surveyed.
 */
record SharedSizeCheck(LoadedJob job, Plan plan, Problems problems) {
    void check() throws IOException {
        if (!plan.sharing().isAny()) {
            return;
        }
        ItemMerge merge = new ItemMerge(job, plan.sharing());
        for (Plate plate : plan.plates()) {
            for (Part part : plate.parts()) {
                for (LoadedItem item : merge.load(plate, part)) {
                    check(plate, item);
                }
            }
        }
    }

    private void check(Plate plate, LoadedItem item) {
        if (!SlotCheck.holds(
                item.placement(), item, plate.group().recipe(), plate.group().lens())) {
            problems.error(
                    Place.of(plate.group().jig().name()),
                    "item " + item.item() + " stands out of slot "
                            + item.placement().slot().id()
                            + " or of the lens's reach once its texts take the size that others share",
                    "make the box that the text is fitted to smaller than the pocket");
        }
    }
}
