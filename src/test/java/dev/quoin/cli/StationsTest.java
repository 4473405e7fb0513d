package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Given a jig larger than the field and the stops to which it can be shifted, each slot is marked in one station. */
class StationsTest {
    @TempDir
    Path folder;

    private LargeJig prepared(int items, String... options) throws IOException {
        LargeJig job = LargeJig.in(folder, items);
        Program.Ended ended = job.quoin().prepare(options);
        assertEquals(0, ended.status(), ended.err());
        assertTrue(ended.err().contains("is worked in 3 stations"), ended.err());
        assertTrue(ended.err().contains("the fewest possible"), ended.err());
        return job;
    }

    @Test
    void aPlateHasAFileForEachStationAndItsItemsLieInTheField() throws IOException {
        LargeJig job = prepared(12);
        CsvText plates = job.table("plates.csv");
        assertEquals(List.of("1", "1", "1"), plates.column("plate"));
        assertEquals(List.of("1", "2", "3"), plates.column("part"));
        assertEquals(List.of("4", "4", "4"), plates.column("items"));
        assertEquals(
                List.of("plate-001-part-1.svg", "plate-001-part-2.svg", "plate-001-part-3.svg"), plates.column("file"));
        assertEquals(
                new TreeSet<>(List.of("-120", "0", "120")),
                new TreeSet<>(job.table("parts.csv").column("shift_x_mm")));
        CsvText items = job.table("items.csv");
        assertEquals(12, items.column("item").size());
        for (String x : items.column("x_mm")) {
            assertEquals(30, Math.abs(Double.parseDouble(x)), 1e-9);
        }
        job.quoin().proven();
    }

    @Test
    void theSheetSaysWhenToShiftAndByHowMuch() throws IOException {
        LargeJig job = prepared(12);
        String sheet = Files.readString(job.run().resolve("run-sheet.html"));
        assertTrue(sheet.contains("Shift the jig by 120 mm "), sheet);
        assertTrue(sheet.contains("Shift the jig by 240 mm "), sheet);
        assertTrue(sheet.contains(" of where it is loaded"), sheet);
    }

    @Test
    void aStationWithoutItemsIsNotWritten() throws IOException {
        // The thirteenth tag stands alone in the first column.
        LargeJig job = prepared(13);
        assertEquals(List.of("1", "1", "1", "2"), job.table("plates.csv").column("plate"));
        assertTrue(Files.exists(job.run().resolve("plate-002.svg")));
        job.quoin().proven();
    }

    @Test
    void shiftingCountsAsTheMachineTableHasIt() throws IOException {
        assertEquals(List.of("74", "0", "0"), prepared(12).table("plates.csv").column("handling_s"));
    }

    @Test
    void shiftingTakesTheSecondsOfTheMachineTable() throws IOException {
        BuiltInShop.copyTo(folder.resolve("shop"), "machine.csv", "shift_s,15,s,\n");
        LargeJig job = prepared(12, "--shop", folder.resolve("shop").toString());
        assertEquals(List.of("74", "15", "15"), job.table("plates.csv").column("handling_s"));
        job.quoin().proven();
    }

    @Test
    void theFirstPieceStandsAtItsStation() throws IOException {
        LargeJig job = prepared(12, "--first-piece");
        String part = job.table("items.csv").column("part").get(0);
        assertTrue(Files.exists(job.run().resolve("plate-001-part-" + part + "-first-piece.svg")));
        job.quoin().proven();
    }

    @Test
    void aJigThatLiesTurnedIsShiftedAlongItself() throws IOException {
        LargeJig job = prepared(12, "--jig-shift", "0.5,0,90");
        CsvText items = job.table("items.csv");
        for (String y : items.column("y_mm")) {
            assertEquals(30, Math.abs(Double.parseDouble(y)), 1e-9);
        }
        job.quoin().proven();
    }

    @Test
    void aReprintStandsAtItsStationAndMayMoveToAnother() throws IOException {
        LargeJig job = prepared(12);
        Program quoin = job.quoin();
        assertEquals(0, quoin.run("reprint", "run", "--item", "1,12").status());
        assertTrue(Files.exists(job.run().resolve("reprints/reprint-001-part-2.svg")));
        assertEquals(
                0, quoin.run("reprint", "run", "--item", "1", "--slot", "B6").status());
        assertFalse(Files.exists(job.run().resolve("reprints/reprint-002-part-2.svg")));
        assertEquals(
                0, quoin.run("reprint", "run", "--item", "2,7,11", "--pack").status());
        CsvText packed = job.table("reprints/reprint-003.csv");
        assertEquals(List.of("A1", "B1", "A2"), packed.column("slot"));
        job.quoin().proven();
        Program.Ended status = quoin.run("status", "run");
        assertEquals(0, status.status(), status.err());
        assertEquals(0, quoin.run("done", "run", "--reprint", "1").status());
        job.quoin().proven();
    }

    @Test
    void anExtensionHasStationsToo() throws IOException {
        LargeJig job = prepared(2);
        Path longer = job.folder().resolve("longer.csv");
        Files.writeString(longer, Files.readString(job.folder().resolve("order.csv")) + "Eve\nFay\nGil\nHal\nIda\n");
        Program.Ended ended = job.quoin().run("extend", "run", longer.toString());
        assertEquals(0, ended.status(), ended.err());
        assertEquals(List.of("2", "2"), job.table("plates-2.csv").column("plate"));
        assertEquals(2, job.table("parts-2.csv").column("part").size());
        job.quoin().proven();
    }

    @Test
    void aQuoteCountsTheSlotsOfAllStations() throws IOException {
        LargeJig job = prepared(12);
        Program.Ended quote = job.quoin().run("quote", ".");
        assertEquals(0, quote.status(), quote.err());
        assertTrue(quote.out().contains("12 of 12"), quote.out());
    }

    @Test
    void aShiftThatTheSettingsDoNotAllowIsFound() throws IOException {
        LargeJig job = prepared(12);
        new Forgery(job.run())
                .change(
                        "parts.csv",
                        text -> text.replace(",120.000,", ",110.000,").replace(",120,", ",110,"));
        Program.Ended verified = job.quoin().run("verify", "run");
        assertEquals(1, verified.status());
        assertTrue(verified.err().contains("the run's settings let no jig stand so"), verified.err());
    }

    @Test
    void stepsThatAreNoneAreToldAndSlotsNoStopBringsIntoReachAreLeftEmpty() throws IOException {
        LargeJig job = LargeJig.in(folder, 3);
        Program.Ended bad = job.quoin().run("prepare", ".", "--out", "run", "--jig-steps", "sixty");
        assertEquals(1, bad.status());
        assertTrue(bad.err().contains("--jig-steps: 'sixty' names no stops; write"), bad.err());
        Program.Ended few = job.quoin().run("prepare", ".", "--out", "run", "--jig-steps", "0,0; 120,0");
        assertEquals(0, few.status(), few.err());
        assertTrue(few.err().contains("slots A5, B5, A6, B6 are out of reach"), few.err());
    }
}
