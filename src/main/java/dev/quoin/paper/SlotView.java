package dev.quoin.paper;

import dev.quoin.geometry.Path;
import dev.quoin.geometry.Point;
import java.util.List;

/**
 * A slot on a plate.
 *
 * @param id the jig's name for it
 * @param centre as seen at the machine, mm (origin at the field's centre, x right, y up, away from the operator)
 * @param rotation anticlockwise, degrees
 * @param pocket the outline around the origin before the turn, mm, y up; as {@code dev.quoin.shop.Slot} has it
 * @param state whether and why it is used or not
 * @param item the number of the item in it, from 1; 0 unless filled
 * @param line of the order's file on which the item's row starts; 0 unless filled
 * @param text what will be marked on the item, line by line, in full; empty unless filled
 */
public record SlotView(
        String id, Point centre, double rotation, Path pocket, SlotState state, int item, int line, List<String> text) {
    public SlotView {
        text = List.copyOf(text);
    }

    public boolean filled() {
        return state == SlotState.FILLED;
    }
}
