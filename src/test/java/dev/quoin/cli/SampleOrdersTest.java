package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The two orders that come with the program. */
class SampleOrdersTest {
    private static final Path PROJECT = Path.of("").toAbsolutePath();

    @TempDir
    Path folder;

    @Test
    void harbourTagsAreTwentyItemsOnOnePlate() throws Exception {
        Path run = prepared("harbour-tags");
        CsvText items = CsvText.read(run.resolve("items.csv"));
        assertEquals(20, items.rows().size());
        assertEquals(Set.of("1"), Set.copyOf(items.column("plate")));
        assertEquals(20, Set.copyOf(items.column("slot")).size());
        assertEquals(List.of("20"), CsvText.read(run.resolve("plates.csv")).column("items"));
    }

    @Test
    void orchardFairIs558ItemsOnPlatesThatMixNoGroups() throws Exception {
        Path run = prepared("orchard-fair");
        CsvText items = CsvText.read(run.resolve("items.csv"));
        assertEquals(558, items.rows().size());
        assertEquals(558, Set.copyOf(items.column("item")).size());
        Map<String, Set<List<String>>> groups = new HashMap<>();
        Set<List<String>> seats = new HashSet<>();
        for (Map<String, String> item : items.rows()) {
            groups.computeIfAbsent(item.get("plate"), plate -> new HashSet<>())
                    .add(List.of(item.get("Recipe"), item.get("Blank"), item.get("Jig")));
            assertTrue(seats.add(List.of(item.get("plate"), item.get("slot"))), () -> "two in a slot: " + item);
        }
        groups.forEach((plate, found) -> assertEquals(1, found.size(), "plate " + plate + ": " + found));
        assertEquals(2, groups.values().stream().distinct().count());
        for (Map<String, String> plate : CsvText.read(run.resolve("plates.csv")).rows()) {
            List<String> group = groups.get(plate.get("plate")).iterator().next();
            assertEquals(group.get(0), plate.get("recipe"));
            assertEquals(group.get(1), plate.get("blank"));
            assertEquals(group.get(2), plate.get("jig") + ".csv");
        }
        assertEquals(
                558,
                CsvText.read(run.resolve("plates.csv")).column("items").stream()
                        .collect(Collectors.summingInt(Integer::parseInt)));
    }

    @Test
    void pierLockersAreOnePlateInThreeStations() throws Exception {
        Path run = prepared("pier-lockers");
        assertEquals(20, CsvText.read(run.resolve("items.csv")).rows().size());
        assertEquals(
                List.of("1", "2", "3"), CsvText.read(run.resolve("plates.csv")).column("part"));
    }

    @Test
    void ferryKeysAreMarkedOnBothSides() throws Exception {
        Path run = prepared("ferry-keys");
        assertEquals(16, CsvText.read(run.resolve("items.csv")).rows().size());
        assertEquals(List.of("8", "8"), CsvText.read(run.resolve("plates.csv")).column("items"));
    }

    @Test
    void kilnCupsAreMarkedInThreeStripsEach() throws Exception {
        Path run = prepared("kiln-cups");
        assertEquals(18, CsvText.read(run.resolve("items.csv")).rows().size());
        assertEquals(
                List.of("1", "2", "3"),
                CsvText.read(run.resolve("plates.csv")).column("part").subList(0, 3));
    }

    private Path prepared(String sample) {
        QuoinRun run = QuoinRun.of(
                PROJECT,
                "prepare",
                "sample-orders/" + sample,
                "--out",
                folder.resolve("run").toString());
        assertEquals(0, run.status(), run.err().toString());
        return folder.resolve("run");
    }
}
