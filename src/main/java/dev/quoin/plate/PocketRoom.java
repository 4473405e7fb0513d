package dev.quoin.plate;

import dev.quoin.geometry.Path;
import dev.quoin.shop.Slot;

/** Whether an outline has room in a slot. */
public final class PocketRoom {
    private PocketRoom() {}

    /** Whether it lies inside the slot's pocket, its middle on the slot's centre. */
    public static boolean holds(Slot slot, Path outline) {
        return PocketFit.of(slot.pocket()).holds(outline);
    }
}
