package dev.quoin.job;

import dev.quoin.geometry.Decimals;
import dev.quoin.plate.Group;
import dev.quoin.plate.Placement;
import dev.quoin.plate.SlotState;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Severity;
import java.util.List;
import java.util.Map;

/** Says which slots of a group's jig are left empty, and why. */
record SlotNotes(Group group, Map<Placement, SlotState> states) {
    void tell(Problems problems) {
        tell(problems, Severity.NOTE, SlotState.UNUSABLE, "marked as not usable, and left empty", "");
        tell(problems, Severity.NOTE, SlotState.SKIPPED, "left empty, as --skip-slots asks", "");
        tell(
                problems,
                Severity.WARNING,
                SlotState.TOO_SMALL,
                "too small for some item of the group (" + group.describe() + "), and left empty",
                "use a jig whose pockets suit all items");
        tell(
                problems,
                Severity.WARNING,
                SlotState.OUT_OF_REACH,
                "out of reach of the lens " + group.lens().name() + " for some item of the group (" + group.describe()
                        + "), and left empty",
                "use a lens with a larger field, or --jig-centre");
    }

    void tellNoneOpen(Problems problems) {
        if (!states.containsValue(SlotState.TOO_SMALL) && !states.containsValue(SlotState.OUT_OF_REACH)) {
            problems.error(
                    Place.of(group.jig().name()),
                    "no slot is left for the group (" + group.describe() + ")",
                    "leave a slot out of --skip-slots, or mark one as usable");
            return;
        }
        problems.error(
                Place.of(group.jig().name()),
                "no usable slot holds every item of the group (" + group.describe() + ") within reach of the lens "
                        + group.lens().name() + " ("
                        + Decimals.mm(group.lens().reach().width()) + " mm square)",
                "use a lens with a larger field, a smaller template or another jig");
    }

    private void tell(Problems problems, Severity severity, SlotState state, String what, String remedy) {
        List<String> ids = states.entrySet().stream()
                .filter(entry -> entry.getValue() == state)
                .map(entry -> entry.getKey().slot().id())
                .toList();
        if (!ids.isEmpty()) {
            String are = ids.size() == 1 ? "slot " + ids.get(0) + " is " : "slots " + String.join(", ", ids) + " are ";
            problems.add(new Problem(severity, Place.of(group.jig().name()), 0, are + what, remedy));
        }
    }
}
