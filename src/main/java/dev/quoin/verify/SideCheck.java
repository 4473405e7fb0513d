package dev.quoin.verify;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The parts of each plate against each other: on each side that is marked, every item of the plate is marked in exactly one
 * part, or, of round pieces, in all.
 */
public final class SideCheck {
    private static final String REMEDY = "prepare the run again";

    private final RunClaims claims;
    private final Function<PlateClaim, Fixture> fixtures;
    private final Problems problems;

    public SideCheck(RunClaims claims, Function<PlateClaim, Fixture> fixtures, Problems problems) {
        this.claims = claims;
        this.fixtures = fixtures;
        this.problems = problems;
    }

    /** Checks all. */
    public void check() {
        Map<PartKey, List<ItemClaim>> items = claims.itemsByPart();
        Map<Integer, SortedSet<Integer>> onPlate = claims.items().stream()
                .collect(Collectors.groupingBy(
                        ItemClaim::plate, Collectors.mapping(ItemClaim::item, Collectors.toCollection(TreeSet::new))));
        claims.filesByPlate()
                .forEach((plate, files) -> check(files, onPlate.getOrDefault(plate, new TreeSet<>()), items));
    }

    private void check(List<PlateClaim> files, Set<Integer> all, Map<PartKey, List<ItemClaim>> items) {
        Map<Optional<?>, Map<Integer, PlateClaim>> sides = new HashMap<>();
        files.forEach(file -> sides.computeIfAbsent(file.stand().flip(), made -> new TreeMap<>())
                .putIfAbsent(file.part(), file));
        int expected = fixtures.apply(files.get(0)).stands().faces().size();
        if (sides.size() != expected) {
            problems.error(
                    files.get(0).place(),
                    "plate " + files.get(0).plate() + " is marked on " + sides.size() + " of " + expected + " sides",
                    REMEDY);
        }
        for (Map<Integer, PlateClaim> parts : sides.values()) {
            boolean round =
                    parts.values().stream().allMatch(part -> part.stand().band().isPresent());
            check(List.copyOf(parts.values()), round ? parts.size() : 1, all, items);
        }
    }

    private void check(List<PlateClaim> parts, int times, Set<Integer> all, Map<PartKey, List<ItemClaim>> items) {
        List<Integer> marked = new ArrayList<>();
        parts.forEach(part -> items.getOrDefault(part.key(), List.of()).forEach(item -> marked.add(item.item())));
        Map<Integer, Integer> counts = new HashMap<>();
        marked.forEach(item -> counts.merge(item, 1, Integer::sum));
        for (int item : all) {
            if (counts.getOrDefault(item, 0) != times) {
                Place place = parts.get(0).place();
                problems.error(
                        place,
                        "item " + item + " of plate " + parts.get(0).plate() + " is in "
                                + counts.getOrDefault(item, 0) + " parts of its "
                                + (parts.get(0).stand().isBack() ? "back" : "front") + ", and not in " + times,
                        REMEDY);
            }
        }
    }
}
