package dev.quoin.job;

import dev.quoin.paper.GroupView;
import dev.quoin.paper.PartView;
import dev.quoin.paper.PlateView;
import dev.quoin.paper.ReprintView;
import dev.quoin.paper.ScanCode;
import dev.quoin.paper.SlotState;
import dev.quoin.paper.SlotView;
import dev.quoin.plate.FieldPose;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Placement;
import dev.quoin.plate.PlateTime;
import dev.quoin.plate.Stand;
import dev.quoin.plate.StepTime;
import dev.quoin.shop.Blank;
import dev.quoin.shop.Cylinder;
import dev.quoin.store.ReprintFolder;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Lays a reprint before its paper. */
record ReprintViews(String run, String reason) {
    ReprintView view(ReprintedPlate plate, int number, List<PlateTime> times) throws IOException {
        double marking =
                times.stream().mapToDouble(time -> time.tally().seconds()).sum();
        double handling = times.stream().mapToDouble(PlateTime::handling).sum();
        List<PartView> parts = parts(plate, number, times);
        Blank blank = plate.blank().orElse(SheetViews.UNNAMED);
        PlateView view = new PlateView(
                plate.plates().first(),
                parts.stream().flatMap(part -> part.files().stream()).toList(),
                group(plate, blank),
                List.of(),
                plate.items().size(),
                marking,
                handling,
                marking + handling,
                0,
                StepTime.sums(times.stream().map(PlateTime::steps).toList()).stream()
                        .map(SheetViews::step)
                        .toList(),
                slots(plate),
                ScanCode.of(run + "/" + ReprintFolder.stem(number)),
                plate.parts().stream().allMatch(part -> part.stand().equals(Stand.LOADED)) ? List.of() : parts);
        return new ReprintView(
                run,
                number,
                plate.items().stream().map(String::valueOf).collect(Collectors.joining(",")),
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
        boolean round = plate.parts().get(0).stand().band().isPresent();
        return new GroupView(
                "",
                plate.recipe().name(),
                blank,
                plate.lens(),
                round,
                plate.lens().focusDistance() + (round ? 0 : blank.thickness()),
                Cylinder.title(plate.jig()),
                1,
                plate.items().size(),
                List.of(),
                List.of());
    }

    private static List<PartView> parts(ReprintedPlate plate, int number, List<PlateTime> times) {
        List<PartView> parts = new ArrayList<>();
        Stand before = Stand.LOADED;
        for (ReprintedPart part : plate.parts()) {
            int index = parts.size();
            parts.add(PartViews.view(
                    index + 1,
                    part.stand(),
                    List.of(ReprintFolder.plateFile(number, index + 1, "svg")),
                    before,
                    part.items().stream().map(LoadedItem::item).toList(),
                    times.get(index).total()));
            before = part.stand();
        }
        return parts;
    }

    private static List<SlotView> slots(ReprintedPlate plate) throws IOException {
        Map<String, RunItem> filled = new HashMap<>();
        plate.rows().forEach(row -> filled.put(plate.slotOf(row.number()), row));
        List<SlotView> slots = new ArrayList<>();
        for (Placement placement : plate.placements().values()) {
            Optional<RunItem> row =
                    Optional.ofNullable(filled.get(placement.slot().id()));
            Placement seen = FieldPose.seen(placement, plate.shop().machine());
            slots.add(new SlotView(
                    placement.slot().id(),
                    seen.centre(),
                    seen.rotation(),
                    placement.slot().pocket(),
                    row.isPresent() ? SlotState.FILLED : state(placement),
                    row.map(RunItem::number).orElse(0),
                    row.map(RunItem::line).orElse(0),
                    row.map(RunItem::values).orElse(List.of())));
        }
        return slots;
    }

    private static SlotState state(Placement placement) {
        return placement.slot().usable() ? SlotState.EMPTY : SlotState.UNUSABLE;
    }
}
