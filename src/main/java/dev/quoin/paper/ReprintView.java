package dev.quoin.paper;

import dev.quoin.shop.Material;
import java.util.List;

/**
 * A reprint: some items of a plate marked again.
 *
 * @param run the run's name
 * @param number of the reprint, from 1
 * @param items the numbers of the items, as text, such as {@code 4,9}
 * @param plates the numbers of the plates that they were prepared for, as text, such as {@code 2, 17}
 * @param reason why, as the user said it; may be empty
 * @param notes what to mind above all
 * @param plate the plate as far as it is marked again: its number, the reprint's files and times, and every slot of the jig,
 *     filled only where an item is marked again
 * @param laserClass as {@link SheetHead} has it
 * @param materials of the blank
 */
public record ReprintView(
        String run,
        int number,
        String items,
        String plates,
        String reason,
        List<String> notes,
        PlateView plate,
        String laserClass,
        List<Material> materials) {
    public ReprintView {
        notes = List.copyOf(notes);
        materials = List.copyOf(materials);
    }
}
