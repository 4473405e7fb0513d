package dev.quoin.job;

import dev.quoin.paper.Change;
import dev.quoin.plate.Group;
import dev.quoin.shop.Blank;
import dev.quoin.shop.Cylinder;
import dev.quoin.shop.Machine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is done on the machine before a plate.
 *
 * @param needed for the first plate, and after each change (design, section 7)
 * @param changes since the plate before; none before the first
 * @param seconds how long it takes
 */
record SetUp(boolean needed, List<Change> changes, double seconds) {
    /** @param before the group of the plate before; empty for the first */
    static SetUp before(Optional<Group> before, Group now, Machine machine) {
        List<Change> changes = before.map(group -> changes(group, now)).orElse(List.of());
        boolean needed = before.isEmpty() || !changes.isEmpty();
        return new SetUp(needed, changes, needed ? machine.setup() + machine.firstPiece() : 0);
    }

    private static List<Change> changes(Group before, Group now) {
        List<Change> changes = new ArrayList<>();
        add(changes, Change.What.LENS, before.lens().name(), now.lens().name());
        add(
                changes,
                Change.What.JIG,
                Cylinder.title(before.jig().name()),
                Cylinder.title(now.jig().name()));
        add(changes, Change.What.BLANK, name(before.blank()), name(now.blank()));
        add(changes, Change.What.RECIPE, before.recipe().name(), now.recipe().name());
        return changes;
    }

    private static void add(List<Change> changes, Change.What what, String before, String now) {
        if (!before.equals(now)) {
            changes.add(new Change(what, before, now));
        }
    }

    private static String name(Optional<Blank> blank) {
        return blank.map(Blank::name).orElse("none named");
    }
}
