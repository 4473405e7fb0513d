package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Given a template for the back and the axis about which the jig is turned over, both sides of each piece are marked. */
class TwoSidesTest {
    @TempDir
    Path folder;

    private Program quoin;

    @BeforeEach
    void given() throws IOException {
        quoin = new Program(folder);
        Files.writeString(folder.resolve("order.csv"), "Name,Number\nAda,17\nBea,18\nCy,19\n");
        // A at the left, turned by 30 degrees; its pocket's left half is higher than its right one.
        Files.writeString(folder.resolve("tray.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="60mm" viewBox="0 0 100 60">
                <path id="A" class="pocket" d="M-12 -8 H0 V-6 H12 V6 H0 V8 H-12 Z" transform="translate(25 20) rotate(-30)"/>
                <path id="B" class="pocket" d="M-12 -8 H0 V-6 H12 V6 H0 V8 H-12 Z" transform="translate(75 45)"/>
                </svg>
                """);
        Files.writeString(folder.resolve("front.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" width="24mm" height="16mm" viewBox="0 0 24 16">
                <text class="engrave" x="4" y="9" font-size="4" font-family="sans-serif">${name}</text>
                <rect class="outline" x="1" y="0.5" width="9" height="15" fill="none" stroke="#000"/>
                </svg>
                """);
        Files.writeString(folder.resolve("back.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" width="24mm" height="16mm" viewBox="0 0 24 16">
                <text class="engrave" x="4" y="9" font-size="4" font-family="sans-serif">${number}</text>
                <rect class="engrave" x="14" y="0.5" width="9" height="15"/>
                </svg>
                """);
        Files.writeString(folder.resolve("job.properties"), """
                template=front.svg
                back-template=back.svg
                flip=y
                jig=tray.svg
                lens=short-100
                recipe=steel-tag
                blank=steel-40x24
                """);
    }

    private void assertPrepared(String... options) {
        Program.Ended ended = quoin.prepare(options);
        assertEquals(0, ended.status(), ended.err());
        Program.Ended verified = quoin.proven();
        assertTrue(verified.out().contains("3 items, each once"), verified.out());
    }

    private void assertPose(int line, String part, String template, double x, double y, double rotation)
            throws IOException {
        Map<String, String> row = quoin.table("items.csv").rows().get(line);
        assertEquals(part, row.get("part"));
        assertEquals(template, row.get("template"));
        assertEquals(x, Double.parseDouble(row.get("x_mm")), 1e-3);
        assertEquals(y, Double.parseDouble(row.get("y_mm")), 1e-3);
        assertEquals(rotation, Double.parseDouble(row.get("rotation_deg")), 1e-3);
    }

    @Test
    void aboutTheVerticalAxisSlotsChangeSidesAndTurnTheOtherWay() throws IOException {
        assertPrepared();
        assertPose(0, "1", "front.svg", -25, 10, 30);
        assertPose(1, "2", "back.svg", 25, 10, -30);
        assertPose(2, "1", "front.svg", 25, -15, 0);
        assertPose(3, "2", "back.svg", -25, -15, 0);
        assertEquals(List.of("1", "1", "2", "2"), quoin.table("plates.csv").column("plate"));
        assertEquals(List.of("", "y", "", "y"), quoin.table("parts.csv").column("flip"));
    }

    @Test
    void aboutTheHorizontalAxisTopAndBottomChange() throws IOException {
        assertPrepared("--flip", "x");
        assertPose(1, "2", "back.svg", -25, -10, 150);
        assertPose(3, "2", "back.svg", 25, 15, 180);
    }

    @Test
    void theSheetStopsTheOperatorToTurnThePiecesOver() throws IOException {
        assertPrepared();
        String sheet = Files.readString(folder.resolve("run/run-sheet.html"));
        assertTrue(sheet.contains(
                "Same pieces, turned over: turn the whole jig over, with the pieces in it, left to right"));
        assertTrue(sheet.contains("back: 17"), sheet);
    }

    @Test
    void turningTheJigOverCountsAsAPlateAndLoadsNothingAgain() throws IOException {
        // plate_s is 20 and load_s 4.5 in the invented tables; two items, then one.
        assertPrepared();
        assertEquals(
                List.of("29", "20", "24.5", "20"), quoin.table("plates.csv").column("handling_s"));
    }

    @Test
    void aMarkOnTheBackOutsideTheMirroredPocketIsAnErrorThatNamesItsTemplate() throws IOException {
        // What the front's pocket has room for on the left, the back's has on the right.
        Files.writeString(
                folder.resolve("back.svg"),
                Files.readString(folder.resolve("back.svg")).replace("x=\"14\"", "x=\"1\""));
        Program.Ended ended = quoin.prepare();
        assertEquals(1, ended.status());
        assertTrue(
                ended.err().contains("its ink stands out of every usable pocket of the jig tray (template back.svg)"),
                ended.err());
    }

    @Test
    void textThatDoesNotFitTheBackNamesItsTemplate() throws IOException {
        Files.writeString(folder.resolve("back.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" width="24mm" height="16mm" viewBox="0 0 24 16">
                <rect id="box" class="guide" x="4" y="4" width="2" height="4" fill="none"/>
                <text class="engrave" data-fit="box" data-min-height="3" x="4" y="9" font-size="4">${number}</text>
                </svg>
                """);
        Program.Ended ended = quoin.prepare();
        assertEquals(1, ended.status());
        assertTrue(ended.err().contains("(template back.svg)"), ended.err());
    }

    @Test
    void howTheJigIsTurnedMustBeSaid() throws IOException {
        Files.writeString(
                folder.resolve("job.properties"),
                Files.readString(folder.resolve("job.properties")).replace("flip=y\n", ""));
        Program.Ended ended = quoin.prepare();
        assertEquals(1, ended.status());
        assertTrue(
                ended.err()
                        .contains("--flip: it is not said how the jig is turned over for the back; write y if it"
                                + " is turned left to right, x if top to bottom"),
                ended.err());
    }

    @Test
    void theBackMayComeFromAColumn() throws IOException {
        Files.copy(folder.resolve("back.svg"), folder.resolve("other.svg"));
        Files.writeString(folder.resolve("order.csv"), "Name,Number,Back\nAda,17,\nBea,18,other.svg\nCy,19,\n");
        assertPrepared("--back-template-column", "Back");
        assertEquals(
                List.of("front.svg", "back.svg", "front.svg", "other.svg", "front.svg", "back.svg"),
                quoin.table("items.csv").column("template"));
    }

    @Test
    void aReprintMarksBothSidesInItsOwnSlotOrAnother() throws IOException {
        assertPrepared();
        assertEquals(0, quoin.run("reprint", "run", "--item", "2").status());
        assertTrue(Files.exists(folder.resolve("run/reprints/reprint-001-part-2.svg")));
        assertEquals(
                0, quoin.run("reprint", "run", "--item", "2", "--slot", "A").status());
        assertEquals(0, quoin.run("reprint", "run", "--item", "1,3", "--pack").status());
        assertEquals(
                List.of("1", "1", "2", "2"),
                quoin.table("reprints/reprint-003.csv").column("part"));
        Program.Ended verified = quoin.proven();
        assertTrue(verified.out().contains("3 reprints equal to the originals"), verified.out());
    }

    @Test
    void aCodeOnTheBackIsReadBack() throws IOException {
        Files.writeString(folder.resolve("back.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" width="24mm" height="16mm" viewBox="0 0 24 16">
                <rect class="engrave" x="7" y="3" width="10" height="10" data-code="datamatrix" data-content="${number}"/>
                </svg>
                """);
        assertPrepared();
        Program.Ended verified = quoin.run("verify", "run");
        assertTrue(verified.out().contains("3 codes read back"), verified.out());
    }

    @Test
    void anItemThatIsMissingOnTheBackIsFound() throws IOException {
        assertPrepared();
        new Forgery(folder.resolve("run")).change("items.csv", text -> text.replaceFirst("(?m)^2,3,1,1,2,B.*\\R", ""));
        Program.Ended verified = quoin.run("verify", "run");
        assertEquals(1, verified.status());
        assertTrue(
                verified.err().contains("item 2 of plate 1 is in 0 parts of its back, and not in 1"), verified.err());
    }

    @Test
    void aPlateWhoseBackIsMissingIsFound() throws IOException {
        assertPrepared();
        Forgery forgery = new Forgery(folder.resolve("run"));
        forgery.change("plates.csv", text -> text.replaceFirst("(?m)^2,2,.*\\R", ""));
        forgery.change("items.csv", text -> text.replaceFirst("(?m)^3,4,1,2,2,A.*\\R", ""));
        Program.Ended verified = quoin.run("verify", "run");
        assertEquals(1, verified.status());
        assertTrue(verified.err().contains("plate 2 is marked on 1 of 2 sides"), verified.err());
    }

    @Test
    void theProofShowsBothSides() throws IOException {
        assertEquals(0, quoin.run("proof", ".", "--out", "proof.html").status());
        String proof = Files.readString(folder.resolve("proof.html"));
        assertTrue(proof.contains("<h2>Piece 1</h2>"));
        assertTrue(proof.contains("<h2>Piece 1: back</h2>"));
    }

    @Test
    void quotesStatusAndExtensionsKnowTheBack() throws IOException {
        assertPrepared();
        assertEquals(0, quoin.run("quote", ".").status());
        assertEquals(0, quoin.run("done", "run", "--plate", "1").status());
        assertEquals(0, quoin.run("status", "run").status());
        Files.writeString(folder.resolve("more.csv"), "Name,Number\nAda,17\nBea,18\nCy,19\nDot,20\n");
        Program.Ended extended = quoin.run("extend", "run", "more.csv");
        assertEquals(0, extended.status(), extended.err());
        assertEquals(List.of("1", "2"), quoin.table("items-2.csv").column("part"));
        quoin.proven();
    }
}
