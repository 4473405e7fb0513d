package dev.quoin.verify;

import dev.quoin.plate.Stand;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.store.Run;
import dev.quoin.table.Table;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What the tables of a run claim, to be proven. */
public record RunClaims(List<ItemClaim> items, List<PlateClaim> plates) {
    public RunClaims {
        items = List.copyOf(items);
        plates = List.copyOf(plates);
    }

    /**
     * Reads them; nothing if a cell that must be a number is none.
     *
     * @throws IOException if a table is missing or was changed
     */
    public static Optional<RunClaims> read(Run run, Problems problems) throws IOException {
        List<ItemClaim> items = new ArrayList<>();
        List<PlateClaim> plates = new ArrayList<>();
        for (int section = 1; section <= run.sections(); section++) {
            int of = section;
            Table itemTable = run.table(Run.numbered("items.csv", section));
            Table plateTable = run.table(Run.numbered("plates.csv", section));
            try {
                String parts = Run.numbered("parts.csv", section);
                Map<PartKey, Stand> stands = run.has(parts) ? StandClaims.of(run.table(parts)) : Map.of();
                itemTable.rows().forEach(row -> items.add(ItemClaim.of(new RunRow(itemTable, row))));
                plateTable.rows().forEach(row -> plates.add(PlateClaim.of(new RunRow(plateTable, row), of, stands)));
            } catch (IllegalArgumentException e) {
                problems.error(
                        Place.of(itemTable.file()), "cannot be read: " + e.getMessage(), "prepare the run again");
                return Optional.empty();
            }
        }
        return Optional.of(new RunClaims(items, plates));
    }

    /** The items of each part, in the table's order. */
    SortedMap<PartKey, List<ItemClaim>> itemsByPart() {
        return items.stream().collect(Collectors.groupingBy(ItemClaim::key, TreeMap::new, Collectors.toList()));
    }

    /** The files of each part, in the table's order. */
    SortedMap<PartKey, List<PlateClaim>> filesByPart() {
        return plates.stream().collect(Collectors.groupingBy(PlateClaim::key, TreeMap::new, Collectors.toList()));
    }

    /** The files of each plate, in the table's order. */
    public SortedMap<Integer, List<PlateClaim>> filesByPlate() {
        return plates.stream().collect(Collectors.groupingBy(PlateClaim::plate, TreeMap::new, Collectors.toList()));
    }

    /** A check for each part, in their order. */
    public List<PlateCheck> checks(Path folder, ListedFiles listed, Function<PlateClaim, Fixture> fixtures) {
        Map<PartKey, List<ItemClaim>> itemsOf = itemsByPart();
        List<PlateCheck> checks = new ArrayList<>();
        filesByPart()
                .forEach((part, files) -> checks.add(new PlateCheck(
                        folder, listed, files, itemsOf.getOrDefault(part, List.of()), fixtures.apply(files.get(0)))));
        return checks;
    }

    /** The items by number; of two with the same, the first. */
    public Map<Integer, ItemClaim> byNumber() {
        Map<Integer, ItemClaim> found = new TreeMap<>();
        items.forEach(item -> found.putIfAbsent(item.item(), item));
        return found;
    }
}
