package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a run folder holds, to the letter: others' spreadsheets and scripts rely on it. */
class RunFolderTest {
    private static final String OWN_COLUMNS =
            "item,row,copy,plate,part,slot,x_mm,y_mm,rotation_deg,template,recipe,seconds";

    @TempDir
    Path folder;

    @Test
    void theTablesHaveTheseHeaders() throws Exception {
        Path run = prepared(new JobFolder(folder));
        assertEquals(OWN_COLUMNS + ",Name", first(run, "items.csv"));
        assertEquals(
                "plate,part,file,jig,lens,recipe,blank,items,mark_mm,jump_mm,strokes,marking_s,handling_s,total_s",
                first(run, "plates.csv"));
        assertEquals("severity,file,line,column,item,message,remedy", first(run, "problems.csv"));
        assertEquals("file,sha256", first(run, "manifest.csv"));
    }

    @Test
    void theItemsStandInTheFieldAsTheJigSays() throws Exception {
        // B2 stands upright: the box around the pockets reaches from -25 to 112.5 and from -12.5 to 55; its centre is
        // 43.75, 21.25.
        Path run = prepared(new JobFolder(folder));
        List<String> lines = Files.readAllLines(run.resolve("items.csv"));
        assertTrue(lines.get(1).startsWith("1,2,1,1,1,A1,-43.75,-21.25,0,tag.svg,aluminium-tag,"), lines.get(1));
        assertTrue(lines.get(2).startsWith("2,3,1,1,1,A2,16.25,-21.25,180,tag.svg,aluminium-tag,"), lines.get(2));
    }

    @Test
    void aColumnThatIsCalledLikeOneOfOursGetsOrderBeforeIt() throws Exception {
        JobFolder job = new JobFolder(folder).order("Name,item,slot,order.item, plate ", "Ada,x1,y,z,p");
        Path run = prepared(job);
        assertEquals(
                OWN_COLUMNS + ",Name,order.order.item,order.slot,order.item,order. plate ", first(run, "items.csv"));
        assertEquals(0, job.quoin("reprint", "runs/job", "--item", "1").status());
    }

    @Test
    void outerBlanksOfCellsAreKeptInTheTableAndNotMarked() throws Exception {
        JobFolder job = new JobFolder(folder).order("Name,Note", "  Ada ,\" said: \"\"a, b\"\" \"");
        Path run = prepared(job);
        assertTrue(Files.readAllLines(run.resolve("items.csv")).get(1).endsWith(",  Ada ,\" said: \"\"a, b\"\" \""));
        String blanks = Files.readString(run.resolve("plate-001.svg"));
        Path plain = prepared(job.order("Name,Note", "Ada,x"), "--out", "plain");
        assertEquals(Files.readString(plain.resolve("plate-001.svg")), blanks);
    }

    @Test
    void theManifestListsEveryFileWithItsDigest() throws Exception {
        JobFolder job = new JobFolder(folder);
        Path fonts = Files.createDirectories(folder.resolve("job/fonts/more"));
        try (var font = BadJob.class.getResourceAsStream("/dev/quoin/lettering/fonts/Barlow-Bold.ttf")) {
            Files.copy(font, fonts.resolve("Own.ttf"));
        }
        Path run = prepared(job.set("fonts", "fonts")
                .template(JobFolder.text("${name}").replace("DejaVu Sans\"", "Barlow\" font-weight=\"bold\"")));
        Map<String, String> listed = new TreeMap<>();
        Files.readAllLines(run.resolve("manifest.csv")).stream()
                .skip(1)
                .forEach(line -> listed.put(line.split(",")[0], line.split(",")[1]));
        assertEquals(digests(run), listed);
        assertTrue(listed.keySet()
                .containsAll(List.of(
                        "inputs/order.csv",
                        "inputs/tag.svg",
                        "inputs/tray.csv",
                        "inputs/job.properties",
                        "inputs/fonts/more/Own.ttf",
                        "inputs/shop/lenses.csv",
                        "inputs/shop/machine.csv",
                        "inputs/shop/recipes.csv",
                        "inputs/shop/blanks.csv",
                        "inputs/shop/materials.csv",
                        "plate-001.svg",
                        "run-sheet.html",
                        "items.csv",
                        "plates.csv",
                        "problems.csv")));
    }

    @Test
    void theInputsAreTheUsersToTheByte() throws Exception {
        JobFolder job = new JobFolder(folder).file("order.csv", "\uFEFFName;Town\r\n\"Ada\";London\r\n");
        Path run = prepared(job);
        for (String name : List.of("order.csv", "tag.svg", "tray.csv")) {
            assertArrayEquals(
                    Files.readAllBytes(folder.resolve("job").resolve(name)),
                    Files.readAllBytes(run.resolve("inputs").resolve(name)));
        }
    }

    @Test
    void theKeptInputsAreAJobThatGivesTheSamePlates() throws Exception {
        JobFolder job = new JobFolder(folder);
        Path run = prepared(job);
        QuoinRun again = job.quoin("prepare", "runs/job/inputs", "--out", "again");
        assertEquals(0, again.status(), again.err().toString());
        assertEquals(
                Files.readString(run.resolve("plate-001.svg")),
                Files.readString(folder.resolve("again/plate-001.svg")));
    }

    @Test
    void tablesAreUtf8WithoutMarkAndEndLinesPlainly() throws Exception {
        Path run = prepared(new JobFolder(folder).order("Name,Note", "Zo\u00EB,\"one\r\ntwo\""));
        for (String name : List.of("items.csv", "plates.csv", "problems.csv", "manifest.csv")) {
            String text = Files.readString(run.resolve(name), StandardCharsets.UTF_8);
            assertTrue(text.charAt(0) != '\uFEFF' && text.endsWith("\n"), name);
            assertTrue(name.equals("items.csv") || !text.contains("\r"), name);
        }
        assertTrue(Files.readString(run.resolve("items.csv")).endsWith(",Zo\u00EB,\"one\r\ntwo\"\n"));
    }

    private static Path prepared(JobFolder job, String... options) {
        QuoinRun run = job.prepare(options);
        assertEquals(0, run.status(), run.err().toString());
        return options.length == 0
                ? job.run()
                : job.run().resolve("../..").resolve(options[1]).normalize();
    }

    private static String first(Path run, String table) throws IOException {
        return Files.readAllLines(run.resolve(table)).get(0);
    }

    private static Map<String, String> digests(Path run) throws Exception {
        Map<String, String> digests = new TreeMap<>();
        SortedMap<String, byte[]> contents = JobFolder.contents(run);
        for (Map.Entry<String, byte[]> file : contents.entrySet()) {
            if (Files.isRegularFile(run.resolve(file.getKey()))
                    && !file.getKey().equals("manifest.csv")) {
                byte[] digest = MessageDigest.getInstance("SHA-256").digest(file.getValue());
                digests.put(file.getKey(), HexFormat.of().formatHex(digest));
            }
        }
        return digests;
    }
}
