package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Given --first-piece, the first item of the first plate after each set-up also stands in a file of its own, where the plate has it. */
class FirstPieceTest {
    private static final String FILE = "plate-001-first-piece.svg";

    @TempDir
    Path folder;

    private JobFolder prepared(String... options) {
        JobFolder job = new JobFolder(folder).order("Name", "Ada", "Grace", "Mary", "Emmy", "Hedy");
        QuoinRun run = job.prepare(options);
        assertEquals(0, run.status(), run.err().toString());
        return job;
    }

    @Test
    void itHoldsTheFirstSlotAsThePlateHasIt() throws Exception {
        Path run = prepared("--first-piece", "--skip-slots", "A1").run();
        String plate = Files.readString(run.resolve("plate-001.svg"));
        String piece = Files.readString(run.resolve(FILE));
        assertEquals(PlateText.group(plate, "step-1-item-0001"), PlateText.group(piece, "step-1-item-0001"));
        assertFalse(piece.contains("item-0002"));
        assertEquals(
                List.of("A2", "B1", "B2", "A2", "B1"),
                CsvText.read(run.resolve("items.csv")).column("slot"));
    }

    @Test
    void theManifestAndTheSheetNameItAndTheTablesCountNothingTwice() throws Exception {
        JobFolder job = prepared("--first-piece");
        Path run = job.run();
        assertTrue(CsvText.read(run.resolve("manifest.csv")).column("file").contains(FILE));
        String sheet = Files.readString(run.resolve("run-sheet.html"));
        assertTrue(sheet.contains("<p class=\"file\">" + FILE + "<br/>plate-001.svg</p>"));
        assertTrue(sheet.contains("holds item 1 alone, in slot A1"));
        assertFalse(sheet.contains("plate-002-first-piece"));
        assertEquals(
                List.of("plate-001.svg", "plate-002.svg"),
                CsvText.read(run.resolve("plates.csv")).column("file"));
        assertEquals(0, job.quoin("verify", "runs/job").status());
    }

    @Test
    void aChangedByteOfItIsFound() throws Exception {
        JobFolder job = prepared("--first-piece");
        Path file = job.run().resolve(FILE);
        Files.writeString(file, Files.readString(file).replaceFirst("(?s)d=\"M(\\d)", "d=\"M7$1"));
        QuoinRun verified = job.quoin("verify", "runs/job");
        assertEquals(1, verified.status());
        assertTrue(verified.err().toString().contains(FILE), verified.err().toString());
    }

    @Test
    void afterEachChangeOverThereIsOneMore() throws Exception {
        SmallJob job = SmallJob.in(folder);
        Files.writeString(
                job.folder().resolve("order.csv"),
                "Name,Recipe\nAda,steel-tag\nBea,steel-tag\nCy,steel-tag\nDot,steel-tag\nEve,aluminium-tag\n");
        Files.writeString(
                job.folder().resolve("job.properties"),
                Files.readString(job.folder().resolve("job.properties"))
                        .replace(
                                "quantity-column=Pieces\ngroup-by=Colour\n",
                                "recipe-column=Recipe\nfirst-piece=true\n"));
        Path run = job.prepared();
        assertEquals(
                List.of("1", "2", "3"), CsvText.read(run.resolve("plates.csv")).column("plate"));
        assertTrue(Files.exists(run.resolve(FILE)));
        assertTrue(Files.notExists(run.resolve("plate-002-first-piece.svg")));
        assertTrue(Files.exists(run.resolve("plate-003-first-piece.svg")));
        assertTrue(CsvText.read(run.resolve("manifest.csv")).column("file").contains("plate-003-first-piece.svg"));
        assertEquals(0, new Program(job.folder()).run("verify", "run").status());
    }

    @Test
    void withoutItThereIsNone() throws Exception {
        assertTrue(Files.notExists(prepared().run().resolve(FILE)));
    }
}
