package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.cli.Program.Ended;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rows that are added to an order become plates beside those that were prepared; nothing else is guessed. */
class ExtendCommandTest {
    @TempDir
    private Path folder;

    private Program quoin;
    private Path run;

    @BeforeEach
    void prepare() throws IOException {
        run = SmallJob.in(folder).prepared();
        quoin = new Program(run.getParent());
    }

    @Test
    void addedRowsGetItemsAndPlatesWhoseNumbersFollowOn() throws IOException {
        Map<String, String> before = contents();
        order(SmallJob.ROWS + "Fay,blue,1\nGus,red,4\n");
        Ended ended = quoin.run("extend", "run", "new.csv");
        assertEquals(0, ended.status(), ended.err());
        assertTrue(ended.out().contains("plates      3 more: 4 to 6\n"), ended.out());
        String items = Files.readString(run.resolve("items-2.csv"));
        assertEquals(6, items.lines().count());
        assertTrue(items.contains("\n9,7,1,") && items.contains("\n10,8,1,") && items.contains("\n13,8,4,"), items);
        for (String file : new String[] {"plate-004.svg", "plates-2.csv", "run-sheet-2.html", "problems-2.csv"}) {
            assertTrue(Files.exists(run.resolve(file)), file);
        }
        Map<String, String> after = contents();
        before.forEach((file, content) -> assertEquals(content, after.get(file), file));
        assertFalse(Files.exists(run.resolve(".extension")));
        assertFalse(Files.exists(run.resolve("record")));
    }

    @Test
    void theExtensionIsSeenByVerifyStatusDoneAndReprint() throws IOException {
        order(SmallJob.ROWS + "Fay,blue,1\nGus,red,4\n");
        quoin.run("extend", "run", "new.csv");
        Ended verified = quoin.run("verify", "run");
        assertEquals(0, verified.status(), verified.err());
        assertTrue(verified.out().contains("; 13 items, each once, on 6 plates"), verified.out());
        assertTrue(quoin.run("status", "run").out().contains("0 of 6 done"));
        assertEquals(
                0, quoin.run("done", "run", "--plate", "5", "--failed", "10").status());
        assertEquals(0, quoin.run("reprint", "run", "--item", "1,10", "--pack").status());
        assertEquals(0, quoin.run("verify", "run").status());
    }

    @Test
    void anExtendedRunIsExtendedAgain() throws IOException {
        order(SmallJob.ROWS + "Fay,blue,1\n");
        assertTrue(quoin.run("extend", "run", "new.csv").out().contains("plates      1 more: 4\n"));
        order(SmallJob.ROWS + "Fay,blue,1\nGus,red,1\n");
        Ended ended = quoin.run("extend", "run", "new.csv");
        assertEquals(0, ended.status(), ended.err());
        assertTrue(Files.readString(run.resolve("items-3.csv")).contains("\n10,8,1,5,"));
        Ended verified = quoin.run("verify", "run");
        assertEquals(0, verified.status(), verified.err());
    }

    @Test
    void rowsMayBeAddedInTheMiddleAndMovedAndStillKeepTheirNumbers() throws IOException {
        order("Eve,red,1\nAda,red,2\nFay,blue,1\nBea,blue,1\nCy,red,2\nDot,blue,2\n");
        assertEquals(0, quoin.run("extend", "run", "new.csv").status());
        assertTrue(Files.readString(run.resolve("items-2.csv")).contains("\n9,4,1,4,"));
        assertEquals(0, quoin.run("verify", "run").status());
    }

    @Test
    void anEqualRowOnceMoreIsAnAddedRow() throws IOException {
        order(SmallJob.ROWS + "Ada,red,2\n");
        assertEquals(0, quoin.run("extend", "run", "new.csv").status());
        assertEquals(3, Files.readString(run.resolve("items-2.csv")).lines().count());
    }

    @Test
    void withoutAnAddedRowNothingIsWritten() throws IOException {
        Map<String, String> before = contents();
        order(SmallJob.ROWS);
        Ended ended = quoin.run("extend", "run", "new.csv");
        assertEquals(0, ended.status());
        assertEquals("new.csv: note: no row was added since the run was prepared\n", ended.err());
        assertEquals(before, contents());
    }

    @Test
    void changedAndGoneRowsAreErrorsAndNothingIsWritten() throws IOException {
        order("Ada,red,2\nBeatrice,blue,1\nCy,red,2\nEve,red,1\nFay,blue,1\n");
        Ended ended = quoin.run("extend", "run", "new.csv");
        assertEquals(1, ended.status());
        assertTrue(
                ended.err().contains("order.csv of the run:3: changed or gone since: Bea, blue, 1; undo"), ended.err());
        assertTrue(
                ended.err().contains("order.csv of the run:5: changed or gone since: Dot, blue, 2; undo"), ended.err());
        assertTrue(ended.err().contains("new.csv:3: note: added or changed since the run was prepared"), ended.err());
        assertFalse(Files.exists(run.resolve("manifest-2.csv")));
    }

    @Test
    void theUserMaySayWhichRowsAreAdded() throws IOException {
        order("Ada,red,2\nBeatrice,blue,1\nCy,red,2\nEve,red,1\nFay,blue,1\n");
        Ended ended = quoin.run("extend", "run", "new.csv", "--add", "6");
        assertEquals(0, ended.status(), ended.err());
        String items = Files.readString(run.resolve("items-2.csv"));
        assertEquals(2, items.lines().count());
        assertTrue(items.contains(",Fay,blue,1"), items);
        Ended verified = quoin.run("verify", "run");
        assertEquals(0, verified.status(), verified.err());
    }

    @Test
    void aLineThatIsNoAddedRowIsAnError() throws IOException {
        order(SmallJob.ROWS + "Fay,blue,1\n");
        Ended ended = quoin.run("extend", "run", "new.csv", "--add", "2");
        assertEquals(1, ended.status());
        assertTrue(ended.err().startsWith("new.csv:2: no row that is added begins on this line; "), ended.err());
    }

    @Test
    void otherColumnsAreAnError() throws IOException {
        Files.writeString(run.resolveSibling("new.csv"), "Name,Pieces\nAda,2\n");
        Ended ended = quoin.run("extend", "run", "new.csv");
        assertEquals(1, ended.status());
        assertTrue(ended.err().contains("new.csv:1:1: other columns than the run was prepared with"), ended.err());
    }

    @Test
    void anErrorInAnAddedRowLeavesNothingBehind() throws IOException {
        order(SmallJob.ROWS + "Fay,blue,many\n");
        Ended ended = quoin.run("extend", "run", "new.csv");
        assertEquals(1, ended.status());
        assertTrue(ended.err().contains("new.csv:7:3: Pieces: 'many' is no whole number"), ended.err());
        assertFalse(Files.exists(run.resolve(".extension")));
        assertEquals(0, quoin.run("verify", "run").status());
    }

    @Test
    void aTemplateThatChangedSinceDoesNotMatterSinceTheRunKeepsItsOwn() throws IOException {
        Files.writeString(run.resolveSibling("tag.svg"), "no longer a drawing");
        order(SmallJob.ROWS + "Fay,blue,1\n");
        Ended ended = quoin.run("extend", "run", "new.csv");
        assertEquals(0, ended.status(), ended.err());
    }

    @Test
    void killedBeforeItWasWholeItIsSweptAway() throws IOException {
        Files.createDirectories(run.resolve(".extension/inputs-2"));
        Files.writeString(run.resolve(".extension/plate-004.svg"), "half a pla");
        order(SmallJob.ROWS + "Fay,blue,1\n");
        assertEquals(1, quoin.run("verify", "run").status());
        assertEquals(0, quoin.run("extend", "run", "new.csv").status());
        assertEquals(0, quoin.run("verify", "run").status());
    }

    @Test
    void killedWhileItsFilesWereMovedItIsEnded() throws IOException {
        order(SmallJob.ROWS + "Fay,blue,1\n");
        quoin.run("extend", "run", "new.csv");
        Map<String, String> whole = contents();
        // As if the kill had come after the first of its files.
        for (String file : new String[] {"items-2.csv", "plates-2.csv", "inputs-2/new.csv", "manifest-2.csv"}) {
            Path staged = run.resolve(".extension").resolve(file);
            Files.createDirectories(staged.getParent());
            Files.move(run.resolve(file), staged);
        }
        Ended verified = quoin.run("verify", "run");
        assertEquals(1, verified.status());
        assertTrue(verified.err().contains("; an extension was cut off: give the same quoin extend again"));
        Ended ended = quoin.run("extend", "run", "new.csv");
        assertEquals(0, ended.status());
        assertTrue(ended.err().contains("no row was added"), ended.err());
        assertEquals(whole, contents());
        assertEquals(0, quoin.run("verify", "run").status());
    }

    private void order(String rows) throws IOException {
        Files.writeString(run.resolveSibling("new.csv"), SmallJob.HEADER + rows);
    }

    private Map<String, String> contents() throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> tree = Files.walk(run)) {
            for (Path file : tree.filter(Files::isRegularFile).toList()) {
                contents.put(run.relativize(file).toString(), Files.readString(file));
            }
        }
        return contents;
    }
}
