package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Point;
import dev.quoin.shop.ShopFiles;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Given a jig that lies a little off, or a field that lies otherwise than the machine's body, all marks go with the
 * pockets. The jig's slots, around its centre: A1 (-43.75, -21.25), A2 (16.25, -21.25) turned by 180, B1 (-43.75, 8.75),
 * B2 (56.25, 8.75) turned by 90.
 */
class JigAlignmentTest {
    private static final String MIRRORED = "A1=43.75,-21.25; A2=-16.25,-21.25; B1=43.75,8.75";

    @TempDir
    java.nio.file.Path folder;

    private JobFolder job;

    @BeforeEach
    void fourTags() {
        job = new JobFolder(folder).order("Name", "Ada", "Grace", "Mary", "Emmy");
    }

    @Test
    void allMarksMoveWithTheShift() throws Exception {
        Map<String, List<Path>> straight = prepared("straight");
        Map<String, List<Path>> shifted = prepared("shifted", "--jig-shift", "1.5,-2,0.8");
        same(straight, Affine.rotate(0.8).then(Affine.translate(1.5, -2)), shifted, Affine.IDENTITY);
        CsvText items = CsvText.read(folder.resolve("shifted/items.csv"));
        assertEquals(List.of("0.8", "-179.2", "0.8", "90.8"), items.column("rotation_deg"));
        assertEquals(0, job.quoin("verify", "shifted").status());
    }

    @Test
    void measuredPointsShiftTheJigAsTheyLie() throws Exception {
        Map<String, List<Path>> straight = prepared("straight");
        Affine really = Affine.rotate(-1.2).then(Affine.translate(0.4, 0.9));
        QuoinRun run = job.prepare("--out", "measured", "--datum", datum(really));
        assertEquals(0, run.status(), run.err().toString());
        assertTrue(run.err().toString().contains("--datum: note: the points fit the jig tray to 0 mm"));
        same(straight, really, PlateMarks.read(folder.resolve("measured/plate-001.svg")), Affine.IDENTITY);
        assertEquals(0, job.quoin("verify", "measured").status());
    }

    private static String datum(Affine really) {
        return String.join(
                "; ", at("A1", -43.75, -21.25, really), at("B1", -43.75, 8.75, really), at("B2", 56.25, 8.75, really));
    }

    private static String at(String slot, double x, double y, Affine really) {
        Point point = really.apply(new Point(x, y));
        return String.format(java.util.Locale.ROOT, "%s=%.6f,%.6f", slot, point.x(), point.y());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "A1=-43.75,-21.25 | one point does not show how the jig is turned; measure two or more slots",
                "A1=-43.75,-21.25; A1=1,1 | slot 'A1' is given twice; give each slot once",
                "A1=-43.75,-21.25; C9=1,1 | the jig tray has no slot 'C9'; known: A1, A2, B1, B2",
                "A1=-43.75; A2=1,1 | 'A1=-43.75' is no measured slot; write slots with x and y in mm, such as A1=-42.1,30.02; D5=41.8,-29.7",
                "A1=-43.75,-21.25; A2=17.25,-21.25 | the measured points miss those of the jig tray by 0.5 mm (root mean square; 0.3 mm are granted); measure again, and check that each slot is the one meant",
                MIRRORED
                        + " | the measured points are a mirror image of the jig tray; check the signs, and field_mirror in machine.csv, which 'quoin jig --arrow' finds out",
                "A1=16.25,-21.25; A2=-43.75,-21.25 | by the measured points the jig tray lies turned by 180 degrees (10 are granted); check that slots are not swapped, or give such a turn by --jig-shift",
            })
    void pointsThatCannotBeRightAreRefused(String datum, String message) throws Exception {
        QuoinRun run = job.prepare("--datum", datum);
        assertEquals(1, run.status());
        assertEquals("--datum: " + message, run.err().get(0));
        assertTrue(Files.notExists(job.run()));
    }

    @ParameterizedTest
    @CsvSource({"1;2;3", "'1,2'", "'1,2,NaN'", "'1,2,x'"})
    void aShiftIsThreeNumbers(String shift) {
        QuoinRun run = job.prepare("--jig-shift", shift);
        assertEquals(1, run.status());
        assertEquals(
                "--jig-shift: '" + shift + "' is no shift; write dx and dy in mm and degrees, such as 0.3,-0.15,0.2",
                run.err().get(0));
    }

    @Test
    void reachIsDecidedWhereTheJigReallyLies() throws Exception {
        assertEquals(0, job.prepare("--out", "straight").status());
        assertEquals(
                List.of("1", "1", "1", "1"),
                CsvText.read(folder.resolve("straight/items.csv")).column("plate"));
        QuoinRun run = job.prepare("--out", "off", "--jig-shift", "40,0,0");
        assertEquals(0, run.status(), run.err().toString());
        List<String> slots = CsvText.read(folder.resolve("off/items.csv")).column("slot");
        assertEquals(List.of("A1", "A2", "B1", "A1"), slots, "B2 lies 96 mm from the centre, out of the field's 95");
    }

    @Test
    void aReprintLiesAsItsPlateDid() throws Exception {
        for (String[] option : new String[][] {
            {"--jig-shift", "1.5,-2,0.8"},
            {"--datum", datum(Affine.rotate(1).then(Affine.translate(1, 1)))}
        }) {
            String out = "run" + option[0];
            assertEquals(0, job.prepare("--out", out, option[0], option[1]).status());
            assertEquals(0, job.quoin("reprint", out, "--item", "2,4").status());
            String plate = Files.readString(folder.resolve(out + "/plate-001.svg"));
            String reprint = Files.readString(folder.resolve(out + "/reprints/reprint-001.svg"));
            for (String group : List.of("step-1-item-0002", "step-1-item-0004")) {
                assertEquals(PlateText.group(plate, group), PlateText.group(reprint, group));
            }
            assertEquals(0, job.quoin("verify", out).status());
        }
    }

    /**
     * The marks of the plate file, taken back to the machine's body by what its numbers mean, lie where they lie in a field
     * that is as the body is: in the pockets, and the right way round. The eight ways a square can lie.
     */
    @ParameterizedTest
    @CsvSource({"0,x", "0,y", "90,none", "90,x", "90,y", "180,none", "180,x", "270,none", "37,x"})
    void theFieldsTurnAndMirrorAreHonoured(double turn, String mirror) throws Exception {
        Map<String, List<Path>> straight = prepared("straight", "--jig-shift", "1,2,3");
        shop(turn, mirror);
        Map<String, List<Path>> turned = prepared("turned", "--shop", "shop", "--jig-shift", "1,2,3");
        Affine mirrored =
                switch (mirror) {
                    case "x" -> new Affine(-1, 0, 0, 1, 0, 0);
                    case "y" -> new Affine(1, 0, 0, -1, 0, 0);
                    default -> Affine.IDENTITY;
                };
        double cos = Math.cos(Math.toRadians(turn));
        double sin = Math.sin(Math.toRadians(turn));
        same(straight, Affine.IDENTITY, turned, mirrored.then(new Affine(cos, sin, -sin, cos, 0, 0)));
        assertNotEquals(
                Files.readString(folder.resolve("straight/plate-001.svg")),
                Files.readString(folder.resolve("turned/plate-001.svg")));
        assertEquals(0, job.quoin("verify", "turned").status());
        assertEquals(jigPicture("straight"), jigPicture("turned"), "the sheet shows the jig as it is seen");
    }

    private List<String> jigPicture(String run) throws Exception {
        String sheet = Files.readString(folder.resolve(run + "/run-sheet.html"));
        List<String> moves = java.util.regex.Pattern.compile("translate\\([^\"]*")
                .matcher(sheet)
                .results()
                .map(java.util.regex.MatchResult::group)
                .toList();
        assertTrue(moves.size() >= 4, moves.toString());
        return moves;
    }

    @Test
    void pointsMeasuredInAMirroredFieldFitThere() throws Exception {
        shop(0, "x");
        QuoinRun run = job.prepare("--shop", "shop", "--datum", MIRRORED);
        assertEquals(0, run.status(), run.err().toString());
    }

    private void shop(double turn, String mirror) throws Exception {
        Files.createDirectories(folder.resolve("shop"));
        for (Map.Entry<String, byte[]> file : ShopFiles.builtIn().files().entrySet()) {
            String text = new String(file.getValue(), StandardCharsets.UTF_8)
                    .replace("field_turn_deg,0,", "field_turn_deg," + turn + ",")
                    .replace("field_mirror,none,", "field_mirror," + mirror + ",");
            Files.writeString(folder.resolve("shop").resolve(file.getKey()), text);
        }
    }

    private Map<String, List<Path>> prepared(String out, String... options) throws Exception {
        List<String> args = new java.util.ArrayList<>(List.of("--out", out));
        args.addAll(List.of(options));
        QuoinRun run = job.prepare(args.toArray(String[]::new));
        assertEquals(0, run.status(), run.err().toString());
        return PlateMarks.read(folder.resolve(out + "/plate-001.svg"));
    }

    private static void same(Map<String, List<Path>> some, Affine move, Map<String, List<Path>> others, Affine back) {
        assertEquals(some.keySet(), others.keySet());
        assertEquals(4, some.size());
        for (String group : some.keySet()) {
            List<Path> a = some.get(group);
            List<Path> b = others.get(group);
            assertEquals(a.size(), b.size());
            for (int i = 0; i < a.size(); i++) {
                List<Point> one = PlateMarks.points(List.of(a.get(i)), move);
                List<Point> other = PlateMarks.points(List.of(b.get(i)), back);
                assertEquals(one.get(0).x(), other.get(0).x(), 0.003, group);
                assertEquals(one.get(0).y(), other.get(0).y(), 0.003, group);
                var box = a.get(i).transform(move).bounds();
                var otherBox = b.get(i).transform(back).bounds();
                assertEquals(box.minX(), otherBox.minX(), 0.003, group);
                assertEquals(box.minY(), otherBox.minY(), 0.003, group);
                assertEquals(box.maxX(), otherBox.maxX(), 0.003, group);
                assertEquals(box.maxY(), otherBox.maxY(), 0.003, group);
            }
        }
    }
}
