package dev.quoin.job;

import dev.quoin.geometry.Decimals;
import dev.quoin.plate.Group;
import dev.quoin.plate.PartPlan;
import dev.quoin.plate.Stand;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.util.List;
import java.util.stream.Collectors;

/** Says in how many stations a group's jig is worked. */
record StationNotes(Group group, PartPlan parts) {
    void tell(Place place, Problems problems) {
        for (List<Stand> side : parts.stands()) {
            String stations = side.size() == 1 ? "1 station" : side.size() + " stations";
            String where = side.stream()
                    .map(stand -> Decimals.mm(stand.dx()) + ", " + Decimals.mm(stand.dy()))
                    .collect(Collectors.joining("; "));
            problems.note(
                    place,
                    "a full jig " + group.jig().name() + " is "
                            + (side.get(0).isBack() ? "worked from the back" : "worked") + " in " + stations
                            + " (" + group.describe() + ", lens " + group.lens().name() + "): " + where + " mm, "
                            + (parts.isProven() ? "the fewest possible" : "maybe not the fewest possible"),
                    "");
        }
    }
}
