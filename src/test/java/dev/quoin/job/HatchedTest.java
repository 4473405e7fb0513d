package dev.quoin.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.store.PlateMark;
import dev.quoin.store.PlateReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Given squares of 2 mm on three slots, filled at 0.05 mm and 45 degrees in three passes with the edge last (the built-in
 * steel-tag), and --hatched.
 */
class HatchedTest {
    private static final ReprintRequest REQUEST = new ReprintRequest(
            new TreeSet<>(Set.of(2)),
            new TreeSet<>(),
            Optional.empty(),
            false,
            Optional.empty(),
            false,
            List.of(),
            List.of(),
            List.of(),
            "");

    @TempDir
    Path folder;

    private SmallJob job;

    @BeforeEach
    void given() throws IOException {
        job = new SmallJob(folder, "Name\nAska\nBirk\nCole\n");
        job.with(JobKey.HATCHED, "true").prepare();
    }

    private static Map<Integer, List<PlateMark>> marks(Path file, Integer... items) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return PlateReader.read(in, Set.of(items));
        }
    }

    private static double mm(PlateMark mark) {
        return mark.path().length(0.001);
    }

    @Test
    void anItemsFillIsAPathForEachPassAndTheEdgeStroked() throws IOException {
        Path plate = job.run().resolve("plate-001.svg");
        List<PlateMark> marks = marks(plate, 2).get(2);
        assertEquals(4, marks.size());
        for (PlateMark pass : marks.subList(0, 3)) {
            assertEquals(2 * 2 / 0.05, mm(pass), 0.005 * 2 * 2 / 0.05);
        }
        assertEquals(8, mm(marks.get(3)), 0.001);
        String text = Files.readString(plate);
        assertFalse(text.contains("fill=\"#"), text);
        assertTrue(text.contains("fill=\"none\" stroke=\"#000000\""), text);
    }

    @Test
    void theStrokesInTheFileAreThoseOfTheTable() throws IOException {
        Map<Integer, List<PlateMark>> marks = marks(job.run().resolve("plate-001.svg"), 1, 2, 3);
        int strokes = marks.values().stream()
                .flatMap(List::stream)
                .mapToInt(mark -> mark.path().flatten(0.001).size())
                .sum();
        double mm = marks.values().stream()
                .flatMap(List::stream)
                .mapToDouble(HatchedTest::mm)
                .sum();
        Map<String, String> plate = job.table("plates.csv").get(0);
        assertEquals(plate.get("strokes"), Integer.toString(strokes));
        assertEquals(Double.parseDouble(plate.get("mark_mm")), mm, 0.05);
    }

    @Test
    void hatchingChangesNoTime() throws IOException {
        List<Map<String, String>> hatched = job.table("items.csv");
        job.without(JobKey.HATCHED).prepare();
        assertEquals(job.table("items.csv"), hatched);
    }

    @Test
    void aReprintHasTheSamePathsToTheLastDigitAndTheSameTime() throws IOException {
        Reprint.Written written = new Reprint(job.run(), REQUEST, Clock.systemUTC(), HeadStart.none())
                .run()
                .result()
                .orElseThrow()
                .get(0);
        Path reprint = job.run().resolve(written.file());
        assertEquals(paths(job.run().resolve("plate-001.svg"), "0002"), paths(reprint, "0002"));
        double first = Double.parseDouble(job.table("items.csv").get(0).get("seconds"));
        double handling = 4.5 + 20;
        assertEquals(first, written.seconds() - handling, 0.003);
    }

    private static List<String> paths(Path plate, String item) throws IOException {
        String text = Files.readString(plate);
        int from = text.indexOf("<g id=\"step-1-item-" + item + "\">");
        return text.substring(from, text.indexOf("</g>", from)).lines().toList();
    }

    @Test
    void theSheetSaysHowToMarkSuchFiles() throws IOException {
        String sheet = Files.readString(job.run().resolve("run-sheet.html"));
        assertTrue(sheet.contains("mark the fill steps as lines, once"), sheet);
    }

    @Test
    void theStepsOfAPlateMayBeSplitToo() throws IOException {
        job.with(JobKey.SPLIT_STEPS, "true").prepare();
        assertEquals(
                4,
                marks(job.run().resolve("plate-001-step-1-engrave.svg"), 2)
                        .get(2)
                        .size());
    }
}
