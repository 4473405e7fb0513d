package dev.quoin.job;

import dev.quoin.geometry.Decimals;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Placement;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Suggestion;
import dev.quoin.shop.Step;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Lays out a reprint: which items share a loading of the jig, in which slots, and which of their steps are repeated. */
final class ReprintPlan {
    /** Smaller turns are the rounding of numbers, degrees. */
    private static final double LEAST_TURN = 1e-6;

    private final ReprintRequest request;
    private final PlateShelf shelf;
    private final GroupKeys keys;
    private final Problems problems;

    ReprintPlan(ReprintRequest request, PlateShelf shelf, GroupKeys keys, Problems problems) {
        this.request = request;
        this.shelf = shelf;
        this.keys = keys;
        this.problems = problems;
    }

    /** The loadings; not to be used where there are errors. */
    List<ReprintedPlate> plates(List<RunItem> items) throws IOException {
        SortedMap<Integer, List<RunItem>> byPlate = new TreeMap<>();
        items.forEach(item -> byPlate.computeIfAbsent(item.plate(), plate -> new ArrayList<>())
                .add(item));
        List<ReprintedPlate> plates = new ArrayList<>();
        for (List<RunItem> rows : byPlate.values()) {
            ReprintedPlate plate = shelf.take(rows);
            plates.add(request.slot().isPresent() ? moved(plate) : plate.only(steps(plate)));
        }
        // A round piece is alone on its plate already.
        boolean round = plates.stream()
                .anyMatch(plate -> plate.shop().round(plate.jig()).isPresent());
        return request.pack() && !round ? packed(plates) : plates;
    }

    private List<Step> steps(ReprintedPlate plate) {
        List<Step> steps = plate.recipe().steps();
        if (request.onlySteps().isEmpty()) {
            return steps;
        }
        for (String name : request.onlySteps()) {
            if (steps.stream().noneMatch(step -> isCalled(step, name))) {
                problems.error(
                        Place.of("--only-steps"),
                        "the recipe " + plate.recipe().name() + " has no step '" + name + "'",
                        Suggestion.remedy(
                                name, steps.stream().map(Step::process).toList()));
            }
        }
        return steps.stream()
                .filter(step -> request.onlySteps().stream().anyMatch(name -> isCalled(step, name)))
                .toList();
    }

    private static boolean isCalled(Step step, String name) {
        return name.equals(step.process()) || name.equals(Integer.toString(step.number()));
    }

    /** Lines that fill were laid in the field: in a slot that is turned otherwise, they turn with the item. */
    private void tellTurned(ReprintedPlate plate, LoadedItem before, LoadedItem now) {
        Placement target = now.placement();
        double turned = target.rotation() - before.placement().rotation();
        if (plate.shop().hatched() && Math.abs(turned) > LEAST_TURN) {
            problems.warning(
                    Place.of(plate.jig()),
                    "the lines that fill the item turn with it by " + Decimals.text(turned, 1) + " degrees in slot '"
                            + target.slot().id() + "'",
                    "choose a slot that lies like its own if their direction matters");
        }
    }

    /** The plate with its one item in the slot that the user asks for. */
    private ReprintedPlate moved(ReprintedPlate plate) throws IOException {
        String slot = request.slot().orElseThrow();
        Reseating reseating = new Reseating(plate);
        if (!reseating.home().containsKey(slot)) {
            problems.error(
                    Place.of(plate.jig()),
                    "the jig has no slot '" + slot + "'",
                    Suggestion.remedy(slot, reseating.home().keySet()));
            return plate;
        }
        if (plate.rows().get(0).slot().equals(slot)) {
            return plate;
        }
        Reseating.Piece piece = Reseating.pieces(plate).get(0);
        if (!reseating.holds(piece, slot)) {
            problems.error(
                    Place.of(plate.jig()),
                    "the slot '" + slot + "' cannot take the item: it is not usable, too small or out of reach",
                    "choose another slot");
            return plate;
        }
        List<ReprintedPart> parts = reseating.parts(Map.of(slot, piece));
        tellTurned(plate, piece.sides().get(0), parts.get(0).items().get(0));
        return plate.holding(parts, plate.rows());
    }

    /** Items of one group together, whatever plates they come from. */
    private List<ReprintedPlate> packed(List<ReprintedPlate> plates) throws IOException {
        Map<List<String>, List<Reseating.Piece>> groups = new LinkedHashMap<>();
        Map<List<String>, ReprintedPlate> samples = new LinkedHashMap<>();
        for (ReprintedPlate plate : plates) {
            for (Reseating.Piece piece : Reseating.pieces(plate)) {
                List<String> key = keys.of(piece.row());
                samples.putIfAbsent(key, plate);
                groups.computeIfAbsent(key, made -> new ArrayList<>()).add(piece);
            }
        }
        List<ReprintedPlate> fresh = new ArrayList<>();
        for (Map.Entry<List<String>, List<Reseating.Piece>> group : groups.entrySet()) {
            ReprintedPlate sample = samples.get(group.getKey());
            fresh.addAll(new Seating(sample, new Reseating(sample), group.getValue()).plates());
        }
        return fresh;
    }
}
