package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Given a round piece, its drawing is laid around it and marked strip by strip, the piece turned between them. */
class RotaryTest {
    @TempDir
    Path folder;

    private Program quoin;

    @BeforeEach
    void given() throws IOException {
        quoin = new Program(folder);
        Files.writeString(folder.resolve("order.csv"), "Name,Number\nAda,17\nBea,18\n");
        Files.writeString(folder.resolve("job.properties"), """
                template=cup.svg
                rotary=72
                lens=short-100
                recipe=coated-bottle
                """);
        Files.writeString(folder.resolve("cup.svg"), cup("""
                <text class="engrave" x="10" y="30" font-size="6" font-family="sans-serif">${name}</text>
                <text class="engrave" x="100" y="30" font-size="6" font-family="sans-serif">${number}</text>
                <circle class="outline" cx="150" cy="30" r="6" fill="none" stroke="#000"/>
                """));
    }

    private static String cup(String content) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"200mm\" height=\"60mm\" viewBox=\"0 0 200 60\">\n"
                + content + "</svg>\n";
    }

    @Test
    void marksThatLieApartGetAStripEachAndNoSeamRunsThroughThem() throws IOException {
        Program.Ended ended = quoin.prepared();
        assertEquals(
                List.of("1", "1", "1", "2", "2", "2"), quoin.table("plates.csv").column("plate"));
        assertEquals(
                List.of("1", "2", "3", "1", "2", "3"), quoin.table("items.csv").column("part"));
        assertEquals("rotary-72x60", quoin.table("plates.csv").column("jig").get(0));
        assertFalse(ended.err().contains("through marks"), ended.err());
        // The circle's middle is 50 mm around from the drawing's middle: 50 / 36 rad.
        double turn =
                Double.parseDouble(quoin.table("parts.csv").column("turn_deg").get(2));
        assertEquals(Math.toDegrees(50 / 36.0), turn, 0.001);
    }

    @Test
    void theSheetSaysHowFarToTurn() throws IOException {
        quoin.prepared();
        String sheet = Files.readString(folder.resolve("run/run-sheet.html"));
        assertTrue(
                sheet.contains("degrees anticlockwise as seen from the drawing&#39;s lower end, to 79.58 degrees"),
                sheet);
        assertTrue(sheet.contains("One round piece a load"));
        assertTrue(sheet.contains("rotary (72 mm across, 60 mm long)"), sheet);
        assertTrue(sheet.contains("</b> (focus distance), down to the top line of the piece"), sheet);
        assertFalse(sheet.contains("what the blank lies on"), sheet);
    }

    @Test
    void beforeTheStartAPieceIsClampedAndNoJigSeated() throws IOException {
        quoin.prepared();
        assertEquals(0, quoin.run("reprint", "run", "--item", "1").status());
        for (String file : List.of("run/run-sheet.html", "run/reprints/reprint-001.html")) {
            String sheet = Files.readString(folder.resolve(file));
            assertTrue(sheet.contains("Piece: clamped, running true over a full turn, clean"), file);
            assertTrue(sheet.contains("Top line level, across the middle of the field"), file);
            assertFalse(sheet.contains("its stops"), file);
            assertFalse(sheet.contains("the pockets"), file);
        }
    }

    @Test
    void blanksThatTheJobDoesNotNameAreCountedWithoutAName() {
        assertTrue(quoin.prepared().out().contains("\nblanks      2 (not named)\n"));
        assertTrue(quoin.run("quote", ".").out().contains(": 2 items; 2 blanks (not named)\n"));
        String json = quoin.prepare("--replace", "--json").out();
        assertTrue(json.contains("\"blanks\":{\"blank\":2}"), json);
    }

    @Test
    void anOverlapOfStripsWithoutARoundPieceIsToldOf() {
        Program.Ended flat = quoin.prepare("--rotary=", "--band-overlap", "0.2");
        assertTrue(
                flat.err()
                        .contains("--band-overlap: warning: no round piece is given; give --rotary too, or take"
                                + " --band-overlap out\n"),
                flat.err());
        assertFalse(quoin.prepare("--band-overlap", "0.2").err().contains("no round piece is given"));
    }

    @Test
    void aMarkWiderThanAStripIsCutWithAnOverlapAndStillWhole() throws IOException {
        Files.writeString(folder.resolve("cup.svg"), cup("""
                <rect class="engrave" x="20" y="20" width="160" height="3"/>
                <path class="outline" d="M20 30 C 60 10 140 50 180 30" fill="none" stroke="#000"/>
                <text class="engrave" x="60" y="50" font-size="6" font-family="sans-serif">${name} ${number}</text>
                """));
        Program.Ended ended = quoin.prepared("--band-overlap", "0.2");
        assertTrue(ended.err().contains("seams run through marks"), ended.err());
        assertTrue(ended.err().contains("strips overlap there by 0.2 mm"), ended.err());
        List<String> from = quoin.table("parts.csv").column("from_mm");
        List<String> to = quoin.table("parts.csv").column("to_mm");
        assertEquals(0.2, Double.parseDouble(to.get(0)) - Double.parseDouble(from.get(1)), 1e-9);
    }

    @Test
    void hatchedStripsKeepToTheDrawing() {
        quoin.prepared("--hatched");
    }

    @Test
    void aTaperedCupIsTiltedAndItsDrawingChangesWidthWithIt() throws IOException {
        quoin.prepared("--rotary", "80,72");
        String sheet = Files.readString(folder.resolve("run/run-sheet.html"));
        // asin(4 / 60) is 3.82 degrees; 40 and 36 against a mean of 38.
        assertTrue(sheet.contains("Tilt the axis by 3.82 degrees, the drawing&#39;s upper end up"), sheet);
        assertTrue(sheet.contains("1.053 times at its lower edge, 0.947 times at its upper edge"), sheet);
    }

    @Test
    void aDrawingWiderThanTheWayAroundIsAnError() {
        Program.Ended ended = quoin.prepare("--rotary", "60");
        assertEquals(1, ended.status());
        assertTrue(
                ended.err()
                        .contains("cup.svg: its page is 200 mm wide, and the way around the piece is 188.496 mm;"
                                + " make the page narrower, or correct --rotary"),
                ended.err());
    }

    @Test
    void whatIsNoDiameterIsToldAndAJigIsNotGivenToo() throws IOException {
        assertTrue(quoin.prepare("--rotary", "wide").err().contains("--rotary: 'wide' is no diameter; write it in mm"));
        Program.Ended both = quoin.prepare("--jig", "tray.csv");
        assertEquals(1, both.status());
        assertTrue(both.err().contains("--jig: a round piece is turned instead, as --rotary says"), both.err());
    }

    /** Given a mark on one piece only, far around from the others: the other piece is not turned there. */
    @ParameterizedTest
    @ValueSource(strings = {"", "--hatched", "--split-steps", "--first-piece"})
    void aStripThatHoldsNoMarksOfAPieceIsNoPartOfItsPlate(String option) throws IOException {
        Files.writeString(folder.resolve("order.csv"), "Name,Number\nAda,\nBea,18\nCy,\n");
        Files.writeString(folder.resolve("cup.svg"), cup("""
                <text class="engrave" x="10" y="30" font-size="6" font-family="sans-serif">${name}</text>
                <text class="engrave" x="100" y="30" font-size="6" font-family="sans-serif">${number!}</text>
                <text class="engrave" x="150" y="30" font-size="6" font-family="sans-serif">${name}</text>
                """));
        quoin.prepared(option.isEmpty() ? new String[0] : new String[] {option});
        assertEquals(
                List.of("1", "2", "1", "2", "3", "1", "2"),
                quoin.table("items.csv").column("part"));
        assertEquals(
                List.of("1", "1", "2", "2", "2", "3", "3"),
                quoin.table("parts.csv").column("plate"));
        List<String> turns = quoin.table("parts.csv").column("turn_deg");
        assertEquals(turns.subList(0, 2), List.of(turns.get(2), turns.get(4)));
        assertTrue(Files.exists(folder.resolve("run/run-sheet.html")));
        assertFalse(Files.exists(folder.resolve("run/plate-001-part-3.svg")));
        assertEquals(0, quoin.run("reprint", "run", "--item", "1-3").status());
        assertEquals(0, quoin.run("done", "run", "--plate", "1").status());
        assertEquals(0, quoin.run("status", "run").status());
        Files.writeString(folder.resolve("more.csv"), "Name,Number\nAda,\nBea,18\nCy,\nDan,\n");
        assertEquals(0, quoin.run("extend", "run", "more.csv").status());
        Program.Ended verified = quoin.proven();
        assertTrue(verified.out().contains("3 reprints equal to the originals"), verified.out());
    }

    @Test
    void aPieceWithMarksOnOneStripAloneIsAPlateOfOnePart() throws IOException {
        Files.writeString(folder.resolve("order.csv"), "Name,Number\nAda,17\nBea,\n");
        Files.writeString(folder.resolve("cup.svg"), cup("""
                <text class="engrave" x="40" y="30" font-size="6" font-family="sans-serif">${name}</text>
                <text class="engrave" x="150" y="30" font-size="6" font-family="sans-serif">${number!}</text>
                """));
        quoin.prepared();
        assertEquals(
                List.of("plate-001-part-1.svg", "plate-001-part-2.svg", "plate-002.svg"),
                quoin.table("plates.csv").column("file"));
        assertTrue(Files.readString(folder.resolve("run/run-sheet.html"))
                .contains("Part <b>1</b>: <span class=\"file\">plate-002.svg"));
        assertEquals(0, quoin.run("reprint", "run", "--item", "2").status());
        quoin.proven();
    }

    @Test
    void aReprintMarksAllStripsAgain() throws IOException {
        quoin.prepared();
        assertEquals(0, quoin.run("reprint", "run", "--item", "2").status());
        assertEquals(0, quoin.run("reprint", "run", "--item", "1,2", "--pack").status());
        assertTrue(Files.exists(folder.resolve("run/reprints/reprint-001-part-3.svg")));
        Program.Ended verified = quoin.proven();
        assertTrue(verified.out().contains("3 reprints equal to the originals"), verified.out());
        assertEquals(0, quoin.run("done", "run", "--plate", "1").status());
        assertEquals(0, quoin.run("status", "run").status());
        assertEquals(0, quoin.run("quote", ".").status());
    }

    @Test
    void anExtensionIsProvenToo() throws IOException {
        quoin.prepared();
        Files.writeString(folder.resolve("more.csv"), "Name,Number\nAda,17\nBea,18\nCy,19\n");
        Program.Ended extended = quoin.run("extend", "run", "more.csv");
        assertEquals(0, extended.status(), extended.err());
        quoin.proven();
    }

    @Test
    void aStripThatLacksAMarkIsFound() throws IOException {
        quoin.prepared();
        new Forgery(folder.resolve("run"))
                .change("plate-001-part-3.svg", text -> text.replaceFirst("<path [^>]*/>", ""));
        Program.Ended verified = quoin.run("verify", "run");
        assertEquals(1, verified.status());
        assertTrue(
                verified.err().contains("the strips of item 1 together are not its drawing in step 2 (outline)"),
                verified.err());
    }

    @Test
    void aStripThatIsTurnedOtherwiseIsFound() throws IOException {
        quoin.prepared();
        new Forgery(folder.resolve("run")).change("parts.csv", text -> text.replaceFirst(",79\\.577,", ",78.577,"));
        Program.Ended verified = quoin.run("verify", "run");
        assertEquals(1, verified.status());
        assertTrue(verified.err().contains("the run's settings let no jig stand so"), verified.err());
    }

    private static String code(int x, int width) {
        return cup("<rect class=\"engrave\" x=\"" + x + "\" y=\"20\" width=\"" + width
                + "\" height=\"10\" data-code=\"code128\" data-content=\"${number}\"/>\n");
    }

    @Test
    void aCodeOnOneStripIsReadBackAndOneThatASeamWouldCutIsAnError() throws IOException {
        Files.writeString(folder.resolve("cup.svg"), code(140, 15));
        quoin.prepared();
        Program.Ended verified = quoin.run("verify", "run");
        assertTrue(verified.out().contains("2 codes read back"), verified.out());
        Files.writeString(folder.resolve("cup.svg"), code(80, 40));
        Program.Ended cut = quoin.prepare("--replace");
        assertEquals(1, cut.status());
        assertTrue(cut.err().contains("a code is wider than a strip, or stands where a seam must run"), cut.err());
    }
}
