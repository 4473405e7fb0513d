package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.cli.Program.Ended;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Items are marked again: in their slots, gathered, or some steps only; nothing that was prepared changes. */
class ReprintCommandTest {
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
    void aWholePlateAgainIsThePlateFileAgain() throws IOException {
        assertEquals(0, quoin.run("reprint", "run", "--plate", "2").status());
        assertEquals(
                Files.readString(run.resolve("plate-002.svg")),
                Files.readString(run.resolve("reprints/reprint-001.svg")));
    }

    @Test
    void withoutPackingEachItemKeepsItsPlateAndSlot() throws IOException {
        quoin.run("reprint", "run", "--item", "2,5,8");
        assertEquals(List.of("2,1,B"), seats(1));
        assertEquals(List.of("5,2,A", "8,2,B"), seats(2));
    }

    @Test
    void packedTheItemsOfAGroupFillOnePlateFromItsFirstUsableSlots() throws IOException {
        Ended ended = quoin.run("reprint", "run", "--item", "2,4,8,6", "--pack", "--reason", "slipped");
        assertEquals(0, ended.status(), ended.err());
        assertEquals(List.of("2,1,A", "4,1,B", "8,2,D"), seats(1), "C is not usable");
        assertEquals(List.of("6,3,A"), seats(2), "blue ones are another group");
        String sheet = Files.readString(run.resolve("reprints/reprint-001.html"));
        assertTrue(sheet.contains("Items <b>2,4,8</b> of plates <b>1, 2</b>, marked again"));
        assertEquals(0, quoin.run("verify", "run").status());
    }

    @Test
    void moreThanAJigFullArePackedOnTwoPlates() throws IOException {
        quoin.run("reprint", "run", "--item", "1,2,4,5,8", "--pack");
        assertEquals(List.of("1,1,A", "2,1,B", "4,1,D"), seats(1));
        assertEquals(List.of("5,2,A", "8,2,B"), seats(2));
        assertFalse(Files.exists(run.resolve("reprints/reprint-003.svg")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2", "outline"})
    void onlySomeStepsAreRepeatedAndTheSheetSaysThatNothingMayHaveMoved(String step) throws IOException {
        assertEquals(
                0,
                quoin.run("reprint", "run", "--item", "1", "--only-steps", step).status());
        String svg = Files.readString(run.resolve("reprints/reprint-001.svg"));
        assertTrue(svg.contains("step-2-item-0001"));
        assertFalse(svg.contains("step-1") || svg.contains("step-3"));
        String sheet = Files.readString(run.resolve("reprints/reprint-001.html"));
        assertTrue(sheet.contains("Only step 2 (outline) is repeated. The pieces must not have moved"));
        assertEquals(0, quoin.run("verify", "run").status());
    }

    @Test
    void aWholeReprintsSheetHasNoSuchNote() throws IOException {
        quoin.run("reprint", "run", "--item", "1");
        assertFalse(Files.readString(run.resolve("reprints/reprint-001.html")).contains("must not have moved"));
    }

    @Test
    void anUnknownStepIsAnErrorThatNamesTheNearest() {
        Ended ended = quoin.run("reprint", "run", "--item", "1", "--only-steps", "outlin");
        assertEquals(1, ended.status());
        assertEquals("--only-steps: the recipe steel-tag has no step 'outlin'; did you mean 'outline'?\n", ended.err());
        assertFalse(Files.exists(run.resolve("reprints")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--item 99999",
                "--item 1 --slot Z",
                "--item 1 --only-steps outlin",
                "--plate 77",
                "--failed log",
                "--item 1 --sheet doc"
            })
    void whatIsRefusedLeavesNothingBehind(String options) {
        Ended ended = quoin.run(("reprint run " + options).split(" "));
        assertEquals(1, ended.status(), ended.err());
        assertFalse(Files.exists(run.resolve("record")));
        assertFalse(Files.exists(run.resolve("reprints")));
    }

    @Test
    void failedItemsAreReadFromATable() throws IOException {
        Files.writeString(run.resolveSibling("failed.csv"), "why;item\nslipped;5\nslipped;1-2\n");
        assertEquals(0, quoin.run("reprint", "run", "--failed", "failed.csv").status());
        assertEquals(List.of("1,1,A", "2,1,B"), seats(1));
        assertEquals(List.of("5,2,A"), seats(2));
    }

    @Test
    void aTableWithWrongNumbersIsToldCellByCell() throws IOException {
        Files.writeString(run.resolveSibling("failed.csv"), "why,item\nslipped,five\nslipped,77\n");
        Ended ended = quoin.run("reprint", "run", "--failed", "failed.csv");
        assertEquals(1, ended.status());
        assertEquals("""
                failed.csv:2:2: 'five' is no item number; write one such as 37, or a list such as 37,52-54
                failed.csv:3:2: the run has no item 77; see the numbers on the run sheet
                """, ended.err());
    }

    @Test
    void withoutAnyItemsOrWithWishesThatContradictItIsWrongUsage() {
        assertEquals(2, quoin.run("reprint", "run").status());
        assertEquals(
                2, quoin.run("reprint", "run", "--item", "1,2", "--slot", "D").status());
        assertEquals(
                2,
                quoin.run("reprint", "run", "--item", "1", "--slot", "D", "--only-steps", "1")
                        .status());
        assertEquals(
                2,
                quoin.run("reprint", "run", "--item", "1", "--pack", "--only-steps", "1")
                        .status());
    }

    @Test
    void whatWasPreparedStaysAsItIs() throws IOException {
        String manifest = Files.readString(run.resolve("manifest.csv"));
        quoin.run("reprint", "run", "--item", "1-8", "--pack");
        assertEquals(manifest, Files.readString(run.resolve("manifest.csv")));
        assertEquals(0, quoin.run("verify", "run").status());
    }

    private List<String> seats(int reprint) throws IOException {
        Pattern row = Pattern.compile("(\\d+,\\d+,\\w+),.*");
        return Files.readString(run.resolve("reprints/reprint-00" + reprint + ".csv"))
                .lines()
                .skip(1)
                .map(row::matcher)
                .filter(Matcher::matches)
                .map(match -> match.group(1))
                .toList();
    }
}
