package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.cli.Program.Ended;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What was done is recorded, and summed up. */
class RecordCommandsTest {
    @TempDir
    private Path folder;

    private Program quoin;
    private Path run;

    @BeforeEach
    void prepare() throws IOException {
        run = SmallJob.in(folder).prepared();
        quoin = new Program(run.getParent());
    }

    @ParameterizedTest
    @CsvSource({"7:41,461", "0:05,5", "75:00,4500", "1:07:41,4061"})
    void theTimeByTheClockIsKeptInSeconds(String took, String seconds) throws IOException {
        Ended ended = quoin.run("done", "run", "--plate", "3", "--took", took);
        assertEquals(0, ended.status(), ended.err());
        String last =
                Files.readString(run.resolve("record/log.csv")).lines().toList().get(1);
        assertTrue(last.contains(",done,3,,," + seconds + ",,,"), last);
    }

    @ParameterizedTest
    @ValueSource(strings = {"7:61", "461", "0:00", "1:60:00", "-1:00", "7.41"})
    void whatIsNoTimeIsWrongUsage(String took) {
        Ended ended = quoin.run("done", "run", "--plate", "3", "--took=" + took);
        assertEquals(2, ended.status());
        assertTrue(ended.err().contains("is no time; write minutes and seconds as 7:41"), ended.err());
    }

    @Test
    void aRunOfOnePlateIsNotToldAsARange() {
        JobFolder job = new JobFolder(folder.resolve("one")).order("Name", "Ada");
        job.prepare();
        assertEquals(
                List.of("plates.csv: the run has no plate 4; its one plate is 1"),
                job.quoin("done", job.run().toString(), "--plate", "4").err());
    }

    @Test
    void aPlateThatTheRunHasNotIsAnErrorAndNothingIsRecorded() {
        Ended ended = quoin.run("done", "run", "--plate", "4");
        assertEquals(1, ended.status());
        assertEquals("plates.csv: the run has no plate 4; its plates are 1 to 3\n", ended.err());
        assertTrue(quoin.run("status", "run").out().contains("0 of 3 done; next is plate 1"));
        assertEquals(
                0,
                quoin.run("prepare", run.getParent().toString(), "--out", "run", "--replace")
                        .status(),
                "no record");
    }

    @Test
    void anItemOfAnotherPlateIsAnErrorAndNothingIsRecorded() {
        Ended ended = quoin.run("done", "run", "--plate", "1", "--failed", "1,3,99");
        assertEquals(1, ended.status());
        assertEquals("""
                --failed: item 3 is not on plate 1; it is on plate 3
                --failed: item 99 is not on plate 1; the run has no such item
                """, ended.err());
        assertTrue(quoin.run("status", "run").out().contains("0 of 3 done"));
        assertFalse(Files.exists(run.resolve("record")));
    }

    @Test
    void aReasonWithoutFailedItemsIsWrongUsage() {
        assertEquals(
                2,
                quoin.run("done", "run", "--plate", "1", "--reason", "slipped").status());
    }

    @Test
    void recordedTwiceItIsToldAndCountsOnce() {
        quoin.run("done", "run", "--plate", "1");
        Ended again = quoin.run("done", "run", "--plate", "1", "--failed", "2");
        assertEquals(0, again.status());
        assertTrue(again.err().contains("record/log.csv: note: plate 1 was recorded as done at "), again.err());
        assertTrue(again.out().startsWith("plate 1 done, failed: item 2; 1 of 3 plates done"), again.out());
    }

    @Test
    void failuresAreFollowedUntilTheyAreRedone() {
        quoin.run("done", "run", "--plate", "1", "--failed", "1,2", "--reason", "slipped");
        quoin.run("done", "run", "--plate", "2", "--failed", "8", "--reason", "blank flaw");
        assertStatus("\"failed\":3,\"failedByReason\":{\"blank flaw\":1,\"slipped\":2},\"redone\":0,"
                + "\"toReprint\":[1, 2, 8],\"toMark\":[]");
        assertEquals(0, quoin.run("reprint", "run", "--item", "1,2").status());
        assertStatus("\"redone\":0,\"toReprint\":[8],\"toMark\":[1, 2]");
        assertEquals(
                0,
                quoin.run("done", "run", "--reprint", "1", "--failed", "2", "--reason", "slipped")
                        .status());
        assertStatus("\"failed\":4,\"failedByReason\":{\"blank flaw\":1,\"slipped\":3},\"redone\":1,"
                + "\"toReprint\":[2, 8],\"toMark\":[]");
        assertEquals(0, quoin.run("reprint", "run", "--failed", "log", "--pack").status());
        assertStatus("\"redone\":1,\"toReprint\":[],\"toMark\":[2, 8]");
        assertEquals(0, quoin.run("done", "run", "--reprint", "2").status());
        assertStatus("\"plates\":3,\"platesDone\":2,\"nextPlate\":3");
        assertStatus("\"redone\":3,\"toReprint\":[],\"toMark\":[]");
        Ended none = quoin.run("reprint", "run", "--failed", "log");
        assertEquals(1, none.status());
        assertTrue(none.err().contains("no item is recorded as failed and not yet reprinted"), none.err());
    }

    @Test
    void theTimeLeftIsThatOfThePlatesAndReprintsNotDone() throws IOException {
        double[] total = Files.readString(run.resolve("plates.csv"))
                .lines()
                .skip(1)
                .mapToDouble(line -> Double.parseDouble(line.substring(line.lastIndexOf(',') + 1)))
                .toArray();
        assertEquals(total[0] + total[1] + total[2], secondsLeft(), 0.001);
        quoin.run("done", "run", "--plate", "2");
        assertEquals(total[0] + total[2], secondsLeft(), 0.001);
        Ended reprint = quoin.run("reprint", "run", "--plate", "2", "--json");
        String seconds = reprint.out().replaceAll("(?s).*\"seconds\":([\\d.]+).*", "$1");
        // The marks are read from the plate file, whose coordinates are rounded.
        assertEquals(total[1], Double.parseDouble(seconds), 0.01, "the whole plate again");
        assertEquals(total[0] + total[2] + total[1], secondsLeft(), 0.01);
    }

    @Test
    void theSummaryIsForPeople() {
        quoin.run("done", "run", "--plate", "1", "--failed", "1,2", "--reason", "slipped");
        String out = quoin.run("status", "run").out();
        assertTrue(out.contains("plates      1 of 3 done; next is plate 2\n"), out);
        assertTrue(out.contains("failed      2: 2 slipped\n"), out);
        assertTrue(out.contains("to reprint  items 1, 2\n"), out);
    }

    private double secondsLeft() {
        return Double.parseDouble(
                quoin.run("status", "run", "--json").out().replaceAll("(?s).*\"secondsLeft\":([\\d.]+).*", "$1"));
    }

    private void assertStatus(String json) {
        String out = quoin.run("status", "run", "--json").out();
        assertTrue(out.contains(json), out);
    }
}
