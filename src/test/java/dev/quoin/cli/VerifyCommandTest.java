package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.cli.Program.Ended;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A run with reprints and a record is proven; whatever is done to it, it is found, and told where. */
class VerifyCommandTest {
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
    void aRunAsItWasPreparedIsProven() {
        Ended ended = quoin.run("verify", "run");
        assertEquals(0, ended.status(), ended.err());
        assertTrue(ended.out().startsWith("proven: 16 files unchanged; 8 items, each once, on 3 plates"), ended.out());
        assertTrue(ended.out().contains("Not proven: "));
    }

    @Test
    void soIsOneWithReprintsOfEachKindAndARecord() {
        work();
        Ended ended = quoin.run("verify", "run");
        assertEquals(0, ended.status(), ended.err());
        assertTrue(ended.out().contains("; 4 reprints equal to the originals; 8 lines of record"), ended.out());
    }

    @Test
    void aChangedByteInAnyFileIsFoundAndTheFileIsNamed() throws IOException {
        work();
        List<Path> files;
        try (Stream<Path> tree = Files.walk(run)) {
            files = tree.filter(Files::isRegularFile).toList();
        }
        assertTrue(files.size() > 25);
        for (Path file : files) {
            byte[] whole = Files.readAllBytes(file);
            for (int at : List.of(0, whole.length / 3, whole.length / 2, whole.length - 9, whole.length - 1)) {
                byte[] changed = whole.clone();
                changed[at] ^= 1;
                Files.write(file, changed);
                Ended ended = quoin.run("verify", "run");
                String name = run.relativize(file).toString();
                String told = "byte " + at + " of " + name + ": " + ended.err();
                assertAll(
                        () -> assertEquals(1, ended.status(), told),
                        () -> assertTrue(ended.err().contains(name), told));
            }
            Files.write(file, whole);
        }
        assertEquals(0, quoin.run("verify", "run").status());
    }

    @Test
    void aMissingFileAndOneThatIsNotListedAreFound() throws IOException {
        Files.delete(run.resolve("plate-002.svg"));
        Files.writeString(run.resolve("notes.txt"), "mine");
        Ended ended = quoin.run("verify", "run");
        assertEquals(1, ended.status());
        assertTrue(ended.err().contains("plate-002.svg: missing; "), ended.err());
        assertTrue(ended.err().contains("notes.txt: no manifest lists it; "), ended.err());
    }

    @Test
    void anItemThatIsMissingInOneStepIsFoundEvenIfTheManifestAgrees() throws IOException {
        forge("plate-001.svg", text -> text.replace("<g id=\"step-2-item-0002\">", "<g id=\"step-2-item-0009\">"));
        assertFound("plate-001.svg: it marks item 9, which items.csv has on another plate or not at all");
        assertFound("plate-001.svg: item 2 is missing in step 2 (outline)");
    }

    @Test
    void aMarkOutsideItsPocketIsFoundEvenIfTheManifestAgrees() throws IOException {
        // The outline of the first item is 18 mm wide in a pocket of 24: 4 mm aside are too many.
        forge("plate-001.svg", text -> {
            int at = text.indexOf("d=\"M", text.indexOf("step-2-item-0001")) + 4;
            int space = text.indexOf(' ', at);
            double x = Double.parseDouble(text.substring(at, space));
            return text.substring(0, at) + (x - 4) + text.substring(space);
        });
        assertFound("plate-001.svg: a mark of item 1 lies outside the pocket of slot A");
    }

    @Test
    void anItemThatTwoRowsClaimIsFound() throws IOException {
        forge("items.csv", text -> text.replace("\n2,2,2,1,1,B", "\n1,2,2,1,1,A"));
        assertFound("items.csv:3: item 1 stands here a second time");
        assertFound("items.csv:3: items 1 and 1 share the slot A of plate 1");
        assertFound("items.csv: item 2 is missing, which order.csv:2 asks for");
    }

    @Test
    void anotherSlotThanTheMarksAreInIsFound() throws IOException {
        forge("items.csv", text -> text.replace("\n1,2,1,1,1,A", "\n1,2,1,1,1,C"));
        assertFound("items.csv:2: item 1 lies in slot C, which is not usable");
    }

    @Test
    void timesThatDoNotAddUpAreFound() throws IOException {
        forge(
                "plates.csv",
                text -> text.replaceFirst("(\n1,.*),(\\d)([\\d.]*),([\\d.]+),([\\d.]+)\n", "$1,9$2$3,$4,$5\n"));
        assertFound("plates.csv:2: plate 1: its items take ");
        assertFound("plates.csv:2: plate 1: marking and handling do not add up to the total");
    }

    @Test
    void aNameThatIsNotTheOrdersIsFound() throws IOException {
        forge("items.csv", text -> text.replace(",Bea,", ",Bee,"));
        assertFound("items.csv:4: item 3 is not what order.csv:3 asks for");
    }

    @Test
    void aReprintThatMarksSomethingElseIsFoundEvenIfItsManifestAgrees() throws IOException {
        quoin.run("reprint", "run", "--item", "1");
        String first = "reprints/reprint-001.svg";
        forge(first, "reprints/manifest-001.csv", text -> text.replaceFirst("d=\"M(\\d+)", "d=\"M1$1"));
        assertFound(first + ": item 1 is not marked as on plate 1 in step 1");
    }

    @Test
    void aReprintWithoutItsManifestIsTold() throws IOException {
        quoin.run("reprint", "run", "--item", "1");
        Files.delete(run.resolve("reprints/manifest-001.csv"));
        assertFound("reprints/reprint-001.svg: no manifest lists it");
    }

    @Test
    void aLineOfTheRecordThatAKillCutShortIsNoFault() throws IOException {
        quoin.run("done", "run", "--plate", "1");
        Path log = run.resolve("record/log.csv");
        Files.writeString(log, Files.readString(log) + "2026-11-25T17:55:45Z,done,2");
        Ended ended = quoin.run("verify", "run");
        assertEquals(0, ended.status(), ended.err());
        assertTrue(ended.err().contains("record/log.csv:3: note: cut short when a program was ended"), ended.err());
    }

    @ParameterizedTest
    @CsvSource({
        "datamatrix,${name}-0042,6,6",
        "qr,https://example.org/${name},8,8",
        "code128,${name},18,6",
        "code39,AB1,18,6",
        "ean13,629104150021,18,6",
        "upca,72527273070,18,6",
        "gs1-datamatrix,(01)09501101530003(10)${name},7,7",
    })
    void codesAreReadBackFromThePlates(String kind, String content, double width, double height) throws IOException {
        Path codes = prepareWithCode(kind, content, width, height);
        Ended ended = quoin.run("verify", codes.toString());
        assertEquals(0, ended.status(), ended.err());
        assertTrue(ended.out().contains("; 8 codes read back; "), ended.out());
    }

    @Test
    void aCodeThatCannotBeReadIsFoundEvenIfTheManifestAgrees() throws IOException {
        run = prepareWithCode("datamatrix", "${name}-0042", 6, 6);
        // The item's mark without its code: a small square in its place.
        forge("plate-001.svg", text -> {
            int at = text.indexOf("d=\"M", text.indexOf("step-1-item-0002")) + 3;
            String start = text.substring(at + 1).split("[A-Za-z]", 2)[0];
            return text.substring(0, at) + "M" + start + "l0.1 0 0 0.1Z" + text.substring(text.indexOf('"', at));
        });
        Ended ended = quoin.run("verify", "codes");
        assertEquals(1, ended.status());
        assertTrue(ended.err().contains("plate-001.svg: no datamatrix code on item 2 reads 'Ada-0042'"), ended.err());
    }

    private Path prepareWithCode(String kind, String content, double width, double height) throws IOException {
        Files.writeString(run.resolveSibling("tag.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" width="20mm" height="10mm" viewBox="0 0 20 10">
                <rect class="engrave" x="1" y="1" width="%s" height="%s" data-code="%s" data-content="%s"/>
                <rect class="outline" x="0.5" y="0.5" width="19" height="9" fill="none" stroke="#000"/>
                </svg>
                """.formatted(width, height, kind, content));
        Ended ended = quoin.run("prepare", run.getParent().toString(), "--out", "codes");
        assertEquals(0, ended.status(), ended.err());
        return run.resolveSibling("codes");
    }

    private void work() {
        assertEquals(
                0,
                quoin.run("done", "run", "--plate", "1", "--took", "7:41", "--failed", "2", "--reason", "slipped")
                        .status());
        assertEquals(0, quoin.run("reprint", "run", "--item", "2").status());
        assertEquals(
                0, quoin.run("reprint", "run", "--item", "1", "--slot", "D").status());
        assertEquals(0, quoin.run("reprint", "run", "--item", "4,8", "--pack").status());
        assertEquals(
                0,
                quoin.run("reprint", "run", "--item", "3", "--only-steps", "outline")
                        .status());
        assertEquals(0, quoin.run("done", "run", "--reprint", "1").status());
    }

    private void assertFound(String problem) {
        Ended ended = quoin.run("verify", "run");
        assertEquals(1, ended.status());
        assertTrue(ended.err().contains(problem), ended.err());
    }

    private void forge(String file, UnaryOperator<String> change) throws IOException {
        forge(file, "manifest.csv", change);
    }

    /** Changes a file, and its manifest to match, as a fault of the writer would. */
    private void forge(String file, String manifest, UnaryOperator<String> change) throws IOException {
        String before = Files.readString(run.resolve(file));
        String after = change.apply(before);
        assertTrue(!after.equals(before), "nothing was changed");
        Files.writeString(run.resolve(file), after);
        String listed = Files.readString(run.resolve(manifest));
        Files.writeString(run.resolve(manifest), listed.replace(sha256(before), sha256(after)));
    }

    private static String sha256(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash);
        } catch (java.security.NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
