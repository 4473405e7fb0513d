package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Given a run of two plates, then failed items can be marked again, recorded, and the run stays as it was. */
class ReprintTest {
    @TempDir
    Path folder;

    private JobFolder job;
    private SortedMap<String, byte[]> before;

    @BeforeEach
    void aRunOfTwoPlates() throws Exception {
        job = new JobFolder(folder).order("Name", "Ada", "Grace", "Mary", "Emmy", "Rosalind", "Hedy");
        assertEquals(0, job.prepare().status());
        before = JobFolder.contents(job.run());
    }

    @Test
    void whatTheManifestListsIsUntouchedAndTheLogTellsOfIt() throws Exception {
        QuoinRun run = job.quoin("reprint", "runs/job", "--item", "2,5-6", "--reason", "slipped, \"twice\"");
        assertEquals(0, run.status(), run.err().toString());
        assertEquals(2, run.out().size());
        SortedMap<String, byte[]> after = JobFolder.contents(job.run());
        before.forEach((name, bytes) -> assertArrayEquals(bytes, after.get(name), name));
        after.keySet().removeAll(before.keySet());
        assertEquals(
                List.of(
                        "record",
                        "record/log.csv",
                        "reprints",
                        "reprints/manifest-001.csv",
                        "reprints/manifest-002.csv",
                        "reprints/reprint-001.csv",
                        "reprints/reprint-001.html",
                        "reprints/reprint-001.svg",
                        "reprints/reprint-002.csv",
                        "reprints/reprint-002.html",
                        "reprints/reprint-002.svg"),
                List.copyOf(after.keySet()));
        List<String> log = Files.readAllLines(job.run().resolve("record/log.csv"));
        assertEquals("at,event,plate,item,slot,seconds,reason,file,check", log.get(0));
        assertEquals(
                List.of(
                        "reprinted,1,2,A2,,\"slipped, \"\"twice\"\"\",reprints/reprint-001.svg",
                        "reprinted,2,5,A1,,\"slipped, \"\"twice\"\"\",reprints/reprint-002.svg",
                        "reprinted,2,6,A2,,\"slipped, \"\"twice\"\"\",reprints/reprint-002.svg"),
                log.stream()
                        .skip(1)
                        .map(line -> line.substring(line.indexOf(',') + 1, line.lastIndexOf(',')))
                        .toList());
    }

    @Test
    void aSecondReprintIsNumberedOnAndTheLogGrows() throws Exception {
        job.quoin("reprint", "runs/job", "--item", "1");
        byte[] log = Files.readAllBytes(job.run().resolve("record/log.csv"));
        assertEquals(0, job.quoin("reprint", "runs/job", "--item", "1").status());
        assertTrue(Files.exists(job.run().resolve("reprints/reprint-002.svg")));
        byte[] longer = Files.readAllBytes(job.run().resolve("record/log.csv"));
        assertArrayEquals(log, Arrays.copyOf(longer, log.length));
        assertEquals(3, Files.readAllLines(job.run().resolve("record/log.csv")).size());
    }

    @Test
    void anotherSlotIsRecorded() throws Exception {
        assertEquals(
                0,
                job.quoin("reprint", "runs/job", "--item", "1", "--slot", "B2").status());
        String plate = Files.readString(job.run().resolve("plate-001.svg"));
        String reprint = Files.readString(job.run().resolve("reprints/reprint-001.svg"));
        assertFalse(reprint.contains(PlateText.group(plate, "step-1-item-0001")));
        assertTrue(Files.readString(job.run().resolve("record/log.csv")).contains(",reprinted,1,1,B2,,"));
    }

    @Test
    void aRunWithARecordIsNotReplaced() throws Exception {
        assertEquals(0, job.prepare("--replace").status());
        assertEquals(0, job.quoin("reprint", "runs/job", "--item", "1").status());
        SortedMap<String, byte[]> recorded = JobFolder.contents(job.run());
        QuoinRun refused = job.prepare("--replace");
        assertEquals(3, refused.status());
        assertEquals(
                List.of(job.run()
                        + ": it has a record of work done, which --replace would lose; choose another with --out"),
                refused.err());
        SortedMap<String, byte[]> after = JobFolder.contents(job.run());
        assertEquals(recorded.keySet(), after.keySet());
        recorded.forEach((name, bytes) -> assertArrayEquals(bytes, after.get(name), name));
    }

    @Test
    void whatIsNotInTheRunIsSaidAndNothingIsWritten() throws Exception {
        QuoinRun item = job.quoin("reprint", "runs/job", "--item", "6-8");
        assertEquals(1, item.status());
        assertEquals(
                List.of(
                        "items.csv: the run has no item 7; see the numbers on the run sheet",
                        "items.csv: the run has no item 8; see the numbers on the run sheet"),
                item.err());
        QuoinRun slot = job.quoin("reprint", "runs/job", "--item", "1", "--slot", "B3");
        assertEquals(1, slot.status());
        assertEquals(List.of("tray: the jig has no slot 'B3'; did you mean 'B1'?"), slot.err());
        nothingIsRecorded();
    }

    /** The log may be there, since its lock is taken first; it is empty then, and the run can still be replaced. */
    private void nothingIsRecorded() throws Exception {
        SortedMap<String, byte[]> after = JobFolder.contents(job.run());
        assertEquals(0, after.getOrDefault("record/log.csv", new byte[0]).length);
        after.keySet().removeAll(before.keySet());
        after.keySet().removeAll(List.of("record", "record/log.csv"));
        assertEquals(List.of(), List.copyOf(after.keySet()));
        assertEquals(0, job.prepare("--replace").status());
    }

    @Test
    void aRunThatIsNotAsItWasPreparedIsRefused() throws Exception {
        Path plate = job.run().resolve("plate-001.svg");
        Files.writeString(plate, Files.readString(plate).replaceFirst("\\d", "7"));
        QuoinRun run = job.quoin("reprint", "runs/job", "--item", "1");
        assertEquals(3, run.status());
        assertEquals(
                List.of(plate + ": changed since the run was prepared; restore it, or prepare the run again"),
                run.err());
        nothingIsRecorded();
        QuoinRun none = job.quoin("reprint", "runs/jbo", "--item", "1");
        assertEquals(3, none.status());
        assertEquals(
                List.of(folder.resolve("runs/jbo") + ": no run folder (it has no manifest.csv); check its name"),
                none.err());
    }

    @Test
    void aJigCalledLikeTheOrderOrTheTemplateIsFound() throws Exception {
        for (String jig : List.of("order", "tag")) {
            String drawing = """
                    <svg xmlns="http://www.w3.org/2000/svg" width="120mm" height="60mm" viewBox="0 0 120 60">
                    <rect class="pocket" id="P1" x="5" y="5" width="50" height="25"/></svg>
                    """;
            job.file("jigs/" + jig + ".svg", drawing).set("jig", "jigs/" + jig + ".svg");
            assertEquals(0, job.prepare("--out", jig).status());
            QuoinRun run = job.quoin("reprint", jig, "--item", "3");
            assertEquals(0, run.status(), run.err().toString());
            assertTrue(run.out().get(0).startsWith(jig + "/reprints/reprint-001.svg  plate 3, item 3, "));
        }
    }
}
