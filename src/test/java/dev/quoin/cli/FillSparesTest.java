package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Given --fill-spares, the last plate of a row's group is filled with more of its pieces, which are numbered after all
 * others. The red tags of the small job leave one slot of plate 2 free.
 */
class FillSparesTest {
    @TempDir
    Path folder;

    private SmallJob job;
    private Program quoin;

    @BeforeEach
    void job() throws IOException {
        job = SmallJob.in(folder);
        quoin = new Program(job.folder());
    }

    @Test
    void theSpareIsNumberedAfterAllOthersAndCounted() throws IOException {
        Program.Ended ended = quoin.prepare("--fill-spares", "2");
        assertEquals(0, ended.status(), ended.err());
        assertTrue(
                ended.err()
                        .contains(
                                "--fill-spares: note: 1 more piece of line 2, item 9, fills the last plate of the group"),
                ended.err());
        Map<String, String> spare = quoin.table("items.csv").rows().get(8);
        assertEquals("9", spare.get("item"));
        assertEquals("2", spare.get("row"));
        assertEquals("3", spare.get("copy"));
        assertEquals("2", spare.get("plate"));
        assertEquals("Ada", spare.get("Name"));
        assertEquals(List.of("3", "3", "3"), quoin.table("plates.csv").column("items"));
        assertTrue(ended.out().contains("9 x steel-40x24"), ended.out());
        assertTrue(Files.readString(job.folder().resolve("run/run-sheet.html")).contains("data-item=\"9\""));
        quoin.proven();
    }

    @Test
    void anItemNamesItsRowToo() throws IOException {
        assertEquals(0, quoin.prepare("--fill-spares", "item 8").status());
        assertEquals("Eve", quoin.table("items.csv").rows().get(8).get("Name"));
    }

    @Test
    void aFullPlateIsLeftAsItIs() throws IOException {
        Program.Ended ended = quoin.prepare("--fill-spares", "3");
        assertEquals(0, ended.status(), ended.err());
        assertTrue(ended.err().contains("the last plate of the group of line 3 is full already"), ended.err());
        assertEquals(8, quoin.table("items.csv").rows().size());
        quoin.proven();
    }

    @Test
    void whatIsNoRowIsTold() {
        Program.Ended none = quoin.prepare("--fill-spares", "Ada");
        assertEquals(1, none.status());
        assertTrue(
                none.err()
                        .contains("--fill-spares: 'Ada' is neither the line of a row nor an item; write a"
                                + " line, such as 14, or an item, such as item 37"),
                none.err());
        assertEquals(1, quoin.prepare("--fill-spares", "99").status());
    }

    @Test
    void aRowOfWhichNothingIsMadeIsToldAndNothingElse() throws IOException {
        String rows = SmallJob.HEADER + SmallJob.ROWS;
        Files.writeString(job.folder().resolve("order.csv"), rows + "Hal,blue,0\n");
        long line = rows.lines().count() + 1;
        Program.Ended ended = quoin.prepare("--fill-spares", Long.toString(line));
        assertEquals(1, ended.status(), ended.err());
        assertTrue(ended.err().contains("--fill-spares: no piece of line " + line + " is on a plate"), ended.err());
        assertFalse(ended.err().contains("full already"), ended.err());
    }

    @Test
    void anExtensionIsNumberedAfterTheSparesAndReprintsKnowThem() throws IOException {
        assertEquals(0, quoin.prepare("--fill-spares", "2").status());
        Files.writeString(
                job.folder().resolve("more.csv"), SmallJob.HEADER + SmallJob.ROWS + "Fay,blue,1\nGil,red,2\n");
        Program.Ended extended = quoin.run("extend", "run", "more.csv");
        assertEquals(0, extended.status(), extended.err());
        assertEquals(List.of("10", "11", "12"), quoin.table("items-2.csv").column("item"));
        quoin.proven();
        assertEquals(0, quoin.run("reprint", "run", "--item", "9").status());
        quoin.proven();
    }

    @Test
    void aSpareThatTheTableHasNotIsFound() throws IOException {
        assertEquals(0, quoin.prepare("--fill-spares", "2").status());
        new Forgery(job.folder().resolve("run")).change("items.csv", text -> text.replaceFirst("(?m)^9,.*\\R", ""));
        Program.Ended verified = quoin.run("verify", "run");
        assertEquals(1, verified.status());
        assertTrue(verified.err().contains("items.csv: item 9 is missing, which order.csv:2 asks for"), verified.err());
    }

    @Test
    void aProofShowsWhatWasOrdered() {
        Program.Ended proof = quoin.run("proof", ".", "--fill-spares", "2", "--out", "proof.html");
        assertEquals(0, proof.status(), proof.err());
        assertTrue(proof.out().contains("8 pieces"), proof.out());
    }
}
