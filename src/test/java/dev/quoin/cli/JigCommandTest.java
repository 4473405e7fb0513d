package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.drawing.DrawnShape;
import dev.quoin.drawing.SvgDrawing;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Point;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Jig;
import dev.quoin.shop.JigReader;
import dev.quoin.shop.Slot;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Given numbers, a jig is made that reads back with the same numbers; given a jig or a lens, the drawings to lay it true. */
class JigCommandTest {
    private static final String ROUND =
            "jig --rows 3 --columns 4 --pitch-x 40 --pitch-y 42.5 --pocket circle:32 --out jigs/round";

    @TempDir
    Path folder;

    private QuoinRun quoin(String line) {
        return QuoinRun.of(folder, line.split(" "));
    }

    @ParameterizedTest
    @ValueSource(strings = {"circle:32", "rect:32x30.5", "rect:32x30.5:4"})
    void aJigReadsBackWithItsNumbers(String pocket) throws Exception {
        QuoinRun run = quoin(ROUND.replace("circle:32", pocket) + " --clearance 0.25 --margin 6");
        assertEquals(0, run.status(), run.err().toString());
        assertEquals(List.of("jigs/round.svg", "jigs/round.csv"), run.out());
        assertEquals(List.of(), run.err());
        Problems problems = new Problems();
        Jig drawn = JigReader.svg("round.svg", Files.readAllBytes(folder.resolve("jigs/round.svg")), problems)
                .orElseThrow();
        Jig table = JigReader.csv("round.csv", Files.readAllBytes(folder.resolve("jigs/round.csv")), problems)
                .orElseThrow();
        assertEquals(List.of(), problems.sorted());
        double height = pocket.startsWith("circle") ? 32.5 : 31;
        for (Jig jig : List.of(drawn, table)) {
            assertEquals(
                    List.of("A1", "A2", "A3", "A4", "B1", "B2", "B3", "B4", "C1", "C2", "C3", "C4"),
                    jig.slots().stream().map(Slot::id).toList());
            at(0, 0, jig.centre());
            at(-60, 42.5, jig.slots().get(0).centre());
            at(20, 0, jig.slots().get(6).centre());
            at(60, -42.5, jig.slots().get(11).centre());
            for (Slot slot : jig.slots()) {
                assertEquals(32.5, slot.width(), 0.001);
                assertEquals(height, slot.height(), 0.001);
                assertEquals(0, slot.rotation());
            }
        }
        Box corner = drawn.slots().get(0).pocket().bounds();
        assertEquals(32.5, corner.width(), 0.001);
        String svg = Files.readString(folder.resolve("jigs/round.svg"));
        assertTrue(svg.contains("width=\"164.5mm\""), "3 x 40 + 32.5 + 2 x 6");
    }

    private static void at(double x, double y, Point point) {
        assertEquals(x, point.x(), 0.001);
        assertEquals(y, point.y(), 0.001);
    }

    /** The labels lie on the plate and on no pocket, and everything is of a process that recipes know. */
    @Test
    void theDrawingCanItselfBeCut() throws Exception {
        assertEquals(0, quoin(ROUND + " --pins -80,0,4;80,0,4 --margin 10").status());
        List<DrawnShape> shapes = shapes(folder.resolve("jigs/round.svg"));
        List<Box> pockets = boxes(shapes, "pocket");
        List<Box> labels = boxes(shapes, "engrave");
        assertEquals(12, pockets.size());
        assertEquals(12, labels.size());
        assertEquals(12 + 2 + 1, boxes(shapes, "cut").size());
        Box plate = boxes(shapes, "cut").get(14);
        assertEquals(172.4, plate.width(), 0.001);
        for (Box label : labels) {
            assertTrue(plate.contains(label, 0));
            assertTrue(pockets.stream().noneMatch(label::meets));
            assertTrue(label.height() > 2, "height " + label.height());
        }
    }

    @Test
    void aJobIsPreparedOnIt() throws Exception {
        assertEquals(
                0,
                quoin("jig --rows 2 --columns 2 --pitch-x 55 --pitch-y 32 --pocket rect:50x25:2 --out made")
                        .status());
        JobFolder job = new JobFolder(folder);
        assertEquals(0, job.prepare("--jig", "made.svg").status());
        CsvText items = CsvText.read(job.run().resolve("items.csv"));
        assertEquals(List.of("A1", "A2"), items.column("slot"));
        assertEquals(List.of("-27.5", "27.5"), items.column("x_mm"));
        assertEquals(0, job.quoin("verify", "runs/job").status());
    }

    @Test
    void nothingIsReplacedUnlessAsked() throws Exception {
        assertEquals(0, quoin(ROUND).status());
        byte[] svg = Files.readAllBytes(folder.resolve("jigs/round.svg"));
        Files.delete(folder.resolve("jigs/round.csv"));
        QuoinRun again = quoin(ROUND + " --margin 8");
        assertEquals(3, again.status());
        assertEquals(
                List.of(folder.resolve("jigs/round.svg")
                        + ": it exists already; choose another with --out, or give --replace"),
                again.err());
        assertEquals(List.of("round.svg"), names("jigs"), "nor is the other of the two written");
        org.junit.jupiter.api.Assertions.assertArrayEquals(svg, Files.readAllBytes(folder.resolve("jigs/round.svg")));
        assertEquals(0, quoin(ROUND + " --margin 8 --replace").status());
        assertEquals(List.of("round.csv", "round.svg"), names("jigs"));
    }

    private List<String> names(String sub) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve(sub))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--pitch-x 32 | the columns overlap: they stand 32 mm apart, and a pocket takes 32.4 mm with its clearance; give a larger --pitch-x",
                "--rows 0 | 0 rows and 4 columns cannot be made; give one or more of each, and at most 10000 pockets in all",
                "--pins 0,0,4;80,0,4 | the pin at 80,0 stands out of the plate, which reaches from its centre to 81.2,63.7; move it, or give a larger --margin",
                "--pins 20,20,20 | the pin at 20,20 meets pocket A3; move it",
            })
    void aJigThatCannotBeMadeIsRefused(String options, String message) throws Exception {
        String option = options.split(" ")[0];
        String line = ROUND.replaceAll(" " + option + " \\S+", "") + " " + options;
        QuoinRun run = quoin(line);
        assertEquals(1, run.status(), run.err().toString());
        assertEquals("jig: " + message, run.err().get(0));
        assertTrue(Files.notExists(folder.resolve("jigs")));
    }

    @Test
    void wrongUsageIsTold() {
        assertEquals(2, quoin("jig --out x").status());
        assertEquals(2, quoin("jig --rows 3 --out x").status());
        assertEquals(2, quoin("jig --arrow").status());
        assertEquals(2, quoin("jig --arrow=false --out jig").status());
        QuoinRun pocket = quoin(ROUND.replace("circle:32", "oval:3"));
        assertEquals(1, pocket.status());
        assertEquals(
                "--pocket: 'oval:3' is no pocket; write circle:32 or rect:50x25, or rect:50x25:3 for corners rounded by 3 mm",
                pocket.err().get(0));
        QuoinRun lens = quoin("jig --arrow --out arrow.svg --lens long-20");
        assertEquals(1, lens.status());
        assertEquals(List.of("--lens: unknown lens 'long-20'; did you mean 'long-200'?"), lens.err());
    }

    @Test
    void theAlignmentFileShowsTheJigWhereItLies() throws Exception {
        assertEquals(0, quoin(ROUND).status());
        QuoinRun run = quoin("jig --outline jigs/round.svg --lens long-200 --jig-shift 2,-1,0 --out align.svg");
        assertEquals(0, run.status(), run.err().toString());
        Map<String, Box> outlines = outlines("align.svg");
        assertEquals(13, outlines.size());
        at(2, -1, outlines.get("jig").centre());
        assertEquals(162.4, outlines.get("jig").width(), 0.002);
        at(-58, 41.5, outlines.get("slot-A1").centre());
        assertEquals(32.4, outlines.get("slot-A1").width(), 0.002);
        QuoinRun small = quoin("jig --outline jigs/round.csv --lens short-100 --out small.svg");
        assertEquals(0, small.status());
        assertEquals(
                List.of("slot-B2", "slot-B3"), List.copyOf(outlines("small.svg").keySet()));
        assertTrue(small.err().contains("jig: note: pocket A1 is not whole in the field of short-100 and is left out"));
    }

    /**
     * However the field lies, what the help says of the arrow gives the numbers by which plates come out right: the point
     * where the beam goes for a plate file's point is where the jig's point is.
     */
    @ParameterizedTest
    @CsvSource({"0,none", "90,none", "180,none", "270,none", "0,y", "90,y", "180,y", "270,y"})
    void theArrowFindsOutHowTheFieldLies(int turn, String mirror) throws Exception {
        assertEquals(0, quoin("jig --arrow --lens long-200 --out arrow.svg").status());
        DrawnShape arrow = shape("arrow.svg", "arrow");
        DrawnShape letter = shape("arrow.svg", "letter-F");
        Affine flip = mirror.equals("y") ? new Affine(1, 0, 0, -1, 0, 0) : Affine.IDENTITY;
        double cos = Math.rint(Math.cos(Math.toRadians(turn)));
        double sin = Math.rint(Math.sin(Math.toRadians(turn)));
        Affine machine = flip.then(new Affine(cos, sin, -sin, cos, 0, 0));
        String seenMirror = readsAsF(letter, machine) ? "none" : "y";
        int seenTurn = pointsTo(arrow, machine);
        assertEquals(mirror, seenMirror);
        assertEquals(turn, seenTurn);
    }

    @Test
    void theLetterIsAnFInTheFile() throws Exception {
        assertEquals(0, quoin("jig --arrow --lens long-200 --out arrow.svg").status());
        List<Point> points =
                PlateMarks.points(List.of(shape("arrow.svg", "letter-F").path()), Affine.IDENTITY);
        assertTrue(points.stream().filter(p -> p.y() < 3.9).allMatch(p -> p.x() <= -2), "its foot stands on the left");
        assertEquals(2, points.stream().filter(p -> p.x() > 3).count(), "its upper arm is the longer one");
    }

    /** A mirror turns round the way in which an outline runs. */
    private static boolean readsAsF(DrawnShape letter, Affine machine) {
        List<Point> points = PlateMarks.points(List.of(letter.path()), machine);
        double area = 0;
        for (int i = 0; i < points.size(); i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % points.size());
            area += a.x() * b.y() - a.y() * b.x();
        }
        return area > 0;
    }

    /** Where the tip lies from the middle of the arrow's box, along its longer side. */
    private static int pointsTo(DrawnShape arrow, Affine machine) {
        List<Point> points = PlateMarks.points(List.of(arrow.path()), machine);
        Box box = arrow.path().transform(machine).bounds();
        boolean lies = box.width() > box.height();
        long right = points.stream().filter(p -> p.x() > box.centre().x()).count();
        long up = points.stream().filter(p -> p.y() > box.centre().y()).count();
        return lies ? (right > 3 ? 0 : 180) : (up > 3 ? 90 : 270);
    }

    private DrawnShape shape(String file, String id) throws IOException {
        return shapes(folder.resolve(file)).stream()
                .filter(shape -> shape.element().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private Map<String, Box> outlines(String file) throws IOException {
        Map<String, Box> boxes = new LinkedHashMap<>();
        for (DrawnShape shape : shapes(folder.resolve(file))) {
            boxes.put(shape.element().id(), shape.path().bounds());
        }
        return boxes;
    }

    private static List<DrawnShape> shapes(Path file) throws IOException {
        Problems problems = new Problems();
        SvgDrawing drawing =
                SvgDrawing.read("drawing", Files.readAllBytes(file), problems).orElseThrow();
        List<DrawnShape> shapes = new ArrayList<>();
        drawing.draw(problems).forEach(drawn -> shapes.add((DrawnShape) drawn));
        assertEquals(List.of(), problems.sorted());
        return shapes;
    }

    private static List<Box> boxes(List<DrawnShape> shapes, String word) {
        return shapes.stream()
                .filter(shape -> shape.element().names().stream()
                        .anyMatch(names -> names.classes().contains(word)))
                .map(shape -> shape.path().bounds())
                .toList();
    }
}
