package dev.quoin.job;

import dev.quoin.paper.GroupView;
import dev.quoin.paper.PlateView;
import dev.quoin.paper.ReprintView;
import dev.quoin.paper.ScanCode;
import dev.quoin.paper.SlotState;
import dev.quoin.paper.SlotView;
import dev.quoin.plate.FieldPose;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Placement;
import dev.quoin.plate.PlateTime;
import dev.quoin.shop.Blank;
import dev.quoin.store.ReprintFolder;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Lays a reprint before its paper. */
record ReprintViews(String run, String reason) {
    ReprintView view(ReprintedPlate plate, int number, PlateTime time) {
        Blank blank = plate.blank().orElse(SheetViews.UNNAMED);
        PlateView view = new PlateView(
                plate.plates().first(),
                List.of(ReprintFolder.name(number, "svg")),
                group(plate, blank),
                List.of(),
                plate.items().size(),
                time.tally().seconds(),
                time.handling(),
                time.total(),
                0,
                time.steps().stream().map(SheetViews::step).toList(),
                slots(plate),
                ScanCode.of(run + "/" + ReprintFolder.stem(number)));
        return new ReprintView(
                run,
                number,
                plate.items().stream()
                        .map(item -> Integer.toString(item.item()))
                        .collect(Collectors.joining(",")),
                plate.plates().stream().map(String::valueOf).collect(Collectors.joining(", ")),
                reason,
                notes(plate),
                view,
                plate.shop().machine().laserClass(),
                plate.blank().map(plate.shop()::material).stream().toList());
    }

    private static List<String> notes(ReprintedPlate plate) {
        if (plate.repeatsAll()) {
            return List.of();
        }
        String steps = plate.steps().stream()
                .map(step -> step.number() + " (" + step.process() + ")")
                .collect(Collectors.joining(", "));
        return List.of(
                "Only step " + steps + " is repeated. The pieces must not have moved in the jig, nor the jig in the "
                        + "machine, since the other steps were marked. If any was taken out, do not use this file.");
    }

    private static GroupView group(ReprintedPlate plate, Blank blank) {
        return new GroupView(
                "",
                plate.recipe().name(),
                blank,
                plate.lens(),
                plate.lens().focusDistance() + blank.thickness(),
                plate.jig(),
                1,
                plate.items().size(),
                List.of(),
                List.of());
    }

    private static List<SlotView> slots(ReprintedPlate plate) {
        Map<String, Integer> filled = new HashMap<>();
        for (int i = 0; i < plate.items().size(); i++) {
            filled.put(plate.items().get(i).placement().slot().id(), i);
        }
        List<SlotView> slots = new ArrayList<>();
        for (Placement placement : plate.placements().values()) {
            Optional<Integer> index =
                    Optional.ofNullable(filled.get(placement.slot().id()));
            Optional<LoadedItem> item = index.map(plate.items()::get);
            Optional<RunItem> row = index.map(plate.rows()::get);
            Placement seen = FieldPose.seen(placement, plate.shop().machine());
            slots.add(new SlotView(
                    placement.slot().id(),
                    seen.centre(),
                    seen.rotation(),
                    placement.slot().pocket(),
                    item.isPresent() ? SlotState.FILLED : state(placement),
                    item.map(LoadedItem::item).orElse(0),
                    row.map(RunItem::line).orElse(0),
                    row.map(RunItem::values).orElse(List.of())));
        }
        return slots;
    }

    private static SlotState state(Placement placement) {
        return placement.slot().usable() ? SlotState.EMPTY : SlotState.UNUSABLE;
    }
}
