package dev.quoin.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.drawing.Drawn;
import dev.quoin.drawing.DrawnShape;
import dev.quoin.drawing.Element;
import dev.quoin.drawing.Names;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Point;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JigReaderTest {
    private static final String HEADERS = "slot,x_mm,y_mm,rotation_deg,width_mm,height_mm,usable\n";

    @Test
    void aTableOfSlots() {
        Problems problems = new Problems();
        Jig jig = csv(HEADERS + "A1,10,20,,30,10,\nA2,50,20,90,30,10,no\n", problems)
                .orElseThrow();
        assertEquals(List.of(), told(problems));
        assertEquals("tray", jig.name());
        assertEquals(
                List.of(
                        new Slot("A1", new Point(10, 20), 0, 30, 10, Path.of(Box.centred(30, 10)), true),
                        new Slot("A2", new Point(50, 20), 90, 30, 10, Path.of(Box.centred(30, 10)), false)),
                jig.slots());
        // The pockets reach from x -5 to 55 (the turned one is 10 wide) and from y 5 to 35.
        assertEquals(new Point(25, 20), jig.centre());
    }

    @Test
    void slotsOfWhichOneLiesInTheMiddleOfAnotherAreToldOnceEach() {
        Problems problems = new Problems();
        csv(HEADERS + "A1,0,0,0,52,27,\nA2,10,0,0,52,27,\nA3,0,10,90,27,8,\n", problems);
        assertEquals(
                List.of(
                        "jigs/tray.csv: warning: slots 'A1' and 'A2' lie one upon the other; "
                                + "correct where they lie, or mark one as not usable",
                        "jigs/tray.csv: warning: slots 'A1' and 'A3' lie one upon the other; "
                                + "correct where they lie, or mark one as not usable"),
                told(problems));
    }

    /** Round pockets of 32 mm, set close: their squares overlap, the pieces do not. A slot not usable holds none. */
    @ParameterizedTest
    @CsvSource({"16, 27.8, 32, yes", "0, 32, 32, yes", "1, 1, 32, no", "20, 0, 32, yes"})
    void slotsSideBySideAndThoseNotUsableAreNot(double x, double y, double side, String usable) {
        Problems problems = new Problems();
        csv(HEADERS + "A1,0,0,0,32,32,\nA2," + x + "," + y + ",0," + side + "," + side + "," + usable, problems);
        assertEquals(List.of(), told(problems));
    }

    @ParameterizedTest
    @CsvSource({
        "'', true",
        "yes, true",
        "Yes, true",
        "true, true",
        "1, true",
        "no, false",
        "FALSE, false",
        "0, false",
    })
    void whatUsableMeans(String cell, boolean usable) {
        assertEquals(
                usable,
                csv(HEADERS + "A,0,0,0,5,5," + cell + "\n", new Problems())
                        .orElseThrow()
                        .slots()
                        .get(0)
                        .usable());
    }

    @Test
    void slipsInATableOfSlots() {
        Problems problems = new Problems();
        assertTrue(csv(HEADERS + "A,1,1,0,5,5,\nA,2,2,0,5,5,\nB,x,1,0,0,5,maybe\n,1,1,400,5,5,\n", problems)
                .isEmpty());
        assertEquals(
                List.of(
                        "jigs/tray.csv:3:1: slot: 'A' stands on line 2 already; rename one",
                        "jigs/tray.csv:4:2: x_mm: 'x' is no number; write a number",
                        "jigs/tray.csv:4:5: width_mm: 0 is out of range; write a number above 0",
                        "jigs/tray.csv:4:7: usable: 'maybe' is not known; write yes or no",
                        "jigs/tray.csv:5:1: slot: empty; write a name",
                        "jigs/tray.csv:5:4: rotation_deg: 400 is out of range; write a number from -360 to 360"),
                told(problems));
    }

    @Test
    void aTableWithoutSlots() {
        Problems problems = new Problems();
        assertTrue(csv(HEADERS, problems).isEmpty());
        assertEquals(List.of("jigs/tray.csv:1: no slot; add a row for each"), told(problems));
    }

    /** A page of 200 x 100 mm with a viewBox of 400 x 200: half a mm a unit. */
    @Test
    void aPocketOfADrawingHasItsPoseFromItsTransforms() {
        Affine turned = Affine.rotate(30).then(Affine.translate(300, 50));
        Jig jig = drawn(new Problems(), rectangle("A1", List.of("pocket"), new Box(10, 20, 90, 60), turned))
                .orElseThrow();
        Slot slot = jig.slots().get(0);
        // The middle (50, 40), turned by 30 degrees in the drawing's sense (y down), lies at (50 cos - 40 sin + 300,
        // ...).
        double x = 50 * Math.cos(Math.PI / 6) - 40 * Math.sin(Math.PI / 6) + 300;
        double y = 50 * Math.sin(Math.PI / 6) + 40 * Math.cos(Math.PI / 6) + 50;
        assertEquals(x / 2 - 100, slot.centre().x(), 1e-9);
        assertEquals(50 - y / 2, slot.centre().y(), 1e-9);
        assertEquals(-30, slot.rotation(), 1e-9, "clockwise in SVG, anticlockwise here");
        assertEquals(40, slot.width(), 1e-9);
        assertEquals(20, slot.height(), 1e-9);
        assertTrue(slot.usable());
        assertEquals(new Point(0, 0), jig.centre());
        assertEquals("tray", jig.name());
    }

    @Test
    void thePocketsOutlineLiesWhereItWasDrawn() {
        Path triangle =
                Path.builder().moveTo(0, 0).lineTo(60, 0).lineTo(0, 20).close().build();
        Affine turned = Affine.rotate(75).then(Affine.translate(120, 90));
        Problems problems = new Problems();
        DrawnShape shape = shape("A1", List.of("pocket", "unusable"), triangle, turned);
        Slot slot = drawn(problems, shape).orElseThrow().slots().get(0);
        Box expected = shape.path().bounds();
        Box actual = slot.pocket().transform(slot.pose()).bounds();
        assertEquals(expected.minX(), actual.minX(), 1e-9);
        assertEquals(expected.minY(), actual.minY(), 1e-9);
        assertEquals(expected.maxX(), actual.maxX(), 1e-9);
        assertEquals(expected.maxY(), actual.maxY(), 1e-9);
        assertFalse(slot.usable());
    }

    @ParameterizedTest
    @CsvSource({"0,0", "90,-90", "180,180", "270,90", "-45,45"})
    void rotationIsAnticlockwiseAboveMinus180(double svg, double expected) {
        DrawnShape shape = rectangle("A", List.of("pocket"), new Box(0, 0, 10, 5), Affine.rotate(svg));
        assertEquals(
                expected,
                drawn(new Problems(), shape).orElseThrow().slots().get(0).rotation(),
                1e-9);
    }

    @Test
    void aPocketKeepsItsSizeAndItsHand() {
        Problems problems = new Problems();
        Box box = new Box(0, 0, 10, 5);
        List<String> pocket = List.of("pocket");
        assertTrue(drawn(
                        problems,
                        rectangle("M", pocket, box, Affine.scale(-1, 1)),
                        rectangle("K", pocket, box, new Affine(1, 0, 0.2, 1, 0, 0)),
                        rectangle("S", pocket, box, Affine.scale(2, 2)),
                        rectangle("N", pocket, box, Affine.scale(1, 1.1)))
                .isEmpty());
        String remedy = " by its transform; draw it in its real size, and only move and rotate it";
        assertEquals(
                List.of(
                        "jigs/tray.svg:7: pocket 'K' is skewed" + remedy,
                        "jigs/tray.svg:7: pocket 'M' is mirrored" + remedy,
                        "jigs/tray.svg:7: pocket 'N' is scaled" + remedy,
                        "jigs/tray.svg:7: pocket 'S' is scaled" + remedy),
                told(problems));
    }

    @Test
    void slipsInADrawing() {
        Problems problems = new Problems();
        Box box = new Box(0, 0, 10, 5);
        List<String> pocket = List.of("pocket");
        drawn(
                problems,
                rectangle("A", pocket, box, Affine.IDENTITY),
                rectangle("A", pocket, box, Affine.translate(20, 0)),
                rectangle("", pocket, box, Affine.IDENTITY),
                rectangle("L", pocket, new Box(0, 0, 10, 0), Affine.IDENTITY));
        assertEquals(
                List.of(
                        "jigs/tray.svg:7: a pocket without an id; give it the name of its slot as id",
                        "jigs/tray.svg:7: pocket 'L' has no size; draw it as an area",
                        "jigs/tray.svg:7: slot 'A' has a pocket on line 7 already; "
                                + "give each pocket one shape, and an id of its own"),
                told(problems));
    }

    @Test
    void aDrawingWithoutPockets() {
        Problems problems = new Problems();
        drawn(problems, rectangle("frame", List.of("guide"), new Box(0, 0, 10, 5), Affine.IDENTITY));
        assertEquals(
                List.of("jigs/tray.svg: no pockets; give each pocket's shape the class 'pocket' and its slot as id"),
                told(problems));
    }

    @Test
    void aUseOfOneShapeMakesManySlots() {
        Names symbol = new Names("shape", List.of());
        Box box = new Box(0, 0, 10, 5);
        DrawnShape[] uses = new DrawnShape[2];
        for (int i = 0; i < 2; i++) {
            List<Names> path = List.of(symbol, new Names("A" + i, List.of("pocket")), new Names("", List.of()));
            uses[i] = shape(path, Path.of(box), Affine.translate(20 * i, 0));
        }
        assertEquals(
                List.of("A0", "A1"),
                drawn(new Problems(), uses).orElseThrow().slots().stream()
                        .map(Slot::id)
                        .toList());
    }

    @Test
    void aDrawingIsReadThroughItsGroupsAndViewBox() {
        Problems problems = new Problems();
        Jig jig = svg("""
                        <svg xmlns="http://www.w3.org/2000/svg" width="10cm" height="5cm" viewBox="100 200 200 100">
                          <defs><rect id="tag" width="60" height="20"/></defs>
                          <rect class="guide" x="100" y="200" width="200" height="100" fill="none" stroke="black"/>
                          <g transform="translate(100 200)">
                            <use id="A1" class="pocket" href="#tag" x="10" y="10"/>
                            <g transform="rotate(90 160 50)">
                              <circle id="A2" class="pocket unusable" cx="160" cy="30" r="10"/>
                            </g>
                          </g>
                        </svg>
                        """, problems).orElseThrow(() -> new AssertionError(told(problems)));
        assertEquals(List.of(), told(problems));
        Slot first = jig.slots().get(0);
        assertEquals("A1", first.id());
        // Its middle is 40, 20 units from the page's upper left corner; half a mm a unit, the page's centre 50, 25 mm.
        assertPoint(-30, 15, first.centre());
        assertEquals(30, first.width(), 1e-4);
        assertEquals(10, first.height(), 1e-4);
        assertEquals(0, first.rotation(), 1e-6);
        Slot second = jig.slots().get(1);
        // The circle's middle stands 20 units above the pivot 160, 50; a quarter clockwise takes it to its right.
        assertPoint(40, 0, second.centre());
        assertEquals(10, second.width(), 1e-4);
        assertEquals(-90, second.rotation(), 1e-6);
        assertFalse(second.usable());
    }

    @Test
    void aPlaceholderInADrawingOfAJigIsAnError() {
        Problems problems = new Problems();
        assertTrue(svg("""
                        <svg xmlns="http://www.w3.org/2000/svg" width="10mm" height="10mm" viewBox="0 0 10 10">
                          <rect id="A" class="pocket" x="${x}" y="0" width="5" height="5"/>
                        </svg>
                        """, problems).isEmpty());
        assertEquals(
                List.of("a placeholder in attribute 'x' of a jig, which has no row to fill it from"),
                problems.sorted().stream().map(Problem::message).toList());
    }

    @Test
    void theSampleJigsAreReadWithoutAProblem() throws IOException {
        java.nio.file.Path folder = java.nio.file.Path.of("templates", "jigs");
        Problems problems = new Problems();
        byte[] drawing = Files.readAllBytes(folder.resolve("harbour-tray.svg"));
        assertEquals(
                20,
                JigReader.svg("harbour-tray.svg", drawing, problems)
                        .orElseThrow()
                        .slots()
                        .size());
        for (String name : List.of("orchard-tray.csv", "fob-tray.csv")) {
            assertTrue(
                    JigReader.csv(name, Files.readAllBytes(folder.resolve(name)), problems)
                            .isPresent(),
                    name);
        }
        assertEquals(List.of(), told(problems));
    }

    private static void assertPoint(double x, double y, Point actual) {
        assertEquals(x, actual.x(), 1e-4);
        assertEquals(y, actual.y(), 1e-4);
    }

    private static Optional<Jig> svg(String text, Problems problems) {
        return JigReader.svg("jigs/tray.svg", text.getBytes(StandardCharsets.UTF_8), problems);
    }

    private static Optional<Jig> csv(String text, Problems problems) {
        return JigReader.csv("jigs/tray.csv", text.getBytes(StandardCharsets.UTF_8), problems);
    }

    private static Optional<Jig> drawn(Problems problems, DrawnShape... shapes) {
        List<Drawn> drawn = Arrays.<Drawn>asList(shapes);
        return JigReader.fromShapes("jigs/tray.svg", drawn, 0.5, problems);
    }

    private static DrawnShape rectangle(String id, List<String> classes, Box box, Affine toPage) {
        return shape(id, classes, Path.of(box), toPage);
    }

    private static DrawnShape shape(String id, List<String> classes, Path path, Affine toPage) {
        return shape(List.of(new Names(id, classes)), path, toPage);
    }

    private static DrawnShape shape(List<Names> names, Path path, Affine toPage) {
        Affine toItem = toPage.then(Affine.translate(-200, -100)).then(Affine.scale(0.5, -0.5));
        Element element = new Element("rect", Place.of("jigs/tray.svg", 7), names, Map.of());
        return new DrawnShape(element, path, toItem, FillRule.NON_ZERO, true, Area.EMPTY);
    }

    private static List<String> told(Problems problems) {
        return problems.sorted().stream().map(Problem::toString).toList();
    }
}
