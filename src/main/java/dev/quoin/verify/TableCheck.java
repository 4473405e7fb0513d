package dev.quoin.verify;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The tables of a run against each other: each item once, on one slot of one plate; counts and times add up. */
public final class TableCheck {
    /** Half of the last decimal that the tables give, s. */
    private static final double ROUNDING = 0.00005;

    private static final String REMEDY = "prepare the run again";

    private final RunClaims claims;
    private final Problems problems;

    public TableCheck(RunClaims claims, Problems problems) {
        this.claims = claims;
        this.problems = problems;
    }

    /** Checks all. */
    public void check() {
        checkOnce();
        Map<PartKey, List<ItemClaim>> items = claims.itemsByPart();
        claims.filesByPart().forEach((part, files) -> checkSums(files, items.getOrDefault(part, List.of())));
        items.keySet().removeAll(claims.filesByPart().keySet());
        items.forEach((part, lost) -> lost.forEach(item -> problems.error(
                item.place(), "item " + item.item() + " is on " + part + ", which the run has not", REMEDY)));
    }

    private void checkOnce() {
        Map<Integer, ItemClaim> first = new HashMap<>();
        Set<String> seen = new HashSet<>();
        Map<String, ItemClaim> slots = new HashMap<>();
        for (ItemClaim item : claims.items()) {
            ItemClaim before = first.putIfAbsent(item.item(), item);
            boolean elsewhere = before != null
                    && (before.plate() != item.plate() || !before.slot().equals(item.slot()));
            if (elsewhere || !seen.add(item.item() + " " + item.key())) {
                problems.error(item.place(), "item " + item.item() + " stands here a second time", REMEDY);
            }
            ItemClaim other = slots.putIfAbsent(item.plate() + " " + item.slot(), item);
            if (other != null && (other.item() != item.item() || other.key().equals(item.key()))) {
                problems.error(
                        item.place(),
                        "items " + other.item() + " and " + item.item() + " share the slot " + item.slot()
                                + " of plate " + item.plate(),
                        REMEDY);
            }
        }
    }

    private void checkSums(List<PlateClaim> files, List<ItemClaim> items) {
        Place place = files.get(0).place();
        String plate = files.get(0).part() == 1
                ? "plate " + files.get(0).plate()
                : files.get(0).key().toString();
        double itemSeconds = items.stream().mapToDouble(ItemClaim::seconds).sum();
        double marking = files.stream().mapToDouble(PlateClaim::marking).sum();
        if (Math.abs(itemSeconds - marking) > ROUNDING * (items.size() + files.size() + 1)) {
            problems.error(
                    place,
                    String.format(
                            Locale.ROOT,
                            "%s: its items take %.4f s of marking, the table says %.4f s",
                            plate,
                            itemSeconds,
                            marking),
                    REMEDY);
        }
        for (PlateClaim file : files) {
            if (Math.abs(file.marking() + file.handling() - file.total()) > ROUNDING * 4) {
                problems.error(file.place(), plate + ": marking and handling do not add up to the total", REMEDY);
            }
        }
    }
}
