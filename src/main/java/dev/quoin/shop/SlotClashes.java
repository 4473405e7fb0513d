package dev.quoin.shop;

import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Point;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.util.List;

/**
 * Finds slots that cannot both hold a piece: the middle of one lies inside the pocket of the other. Pockets that merely
 * touch or overlap are let pass, since a table gives round ones, set close in rows that interlock, as squares.
 */
final class SlotClashes {
    private SlotClashes() {}

    /** Warns of each slot that one before it leaves no room for. */
    static void tell(String file, List<Slot> slots, Problems problems) {
        List<Slot> usable = slots.stream().filter(Slot::usable).toList();
        for (int i = 1; i < usable.size(); i++) {
            Slot slot = usable.get(i);
            usable.subList(0, i).stream()
                    .filter(before -> clash(before, slot))
                    .findFirst()
                    .ifPresent(before -> problems.warning(
                            Place.of(file),
                            "slots '" + before.id() + "' and '" + slot.id() + "' lie one upon the other",
                            "correct where they lie, or mark one as not usable"));
        }
    }

    private static boolean clash(Slot one, Slot other) {
        return covers(one, other.centre()) || covers(other, one.centre());
    }

    private static boolean covers(Slot slot, Point point) {
        double reach = Math.hypot(slot.width(), slot.height()) / 2;
        double dx = point.x() - slot.centre().x();
        double dy = point.y() - slot.centre().y();
        if (Math.abs(dx) >= reach || Math.abs(dy) >= reach) {
            return false;
        }
        Point inPocket = slot.pose().inverse().apply(point);
        return slot.pocket().toShape(FillRule.NON_ZERO).contains(inPocket.x(), inPocket.y());
    }
}
