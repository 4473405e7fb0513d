package dev.quoin.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.geometry.Area;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Areas and lengths of known shapes in closed form; curves by cubics are within 0.0003 of their radius. */
class SvgShapesTest {
    private static final double FINE = 1e-4;

    @Test
    void aCircle() {
        Path circle = Svg.shape("<circle cx='50' cy='25' r='10'/>").path();
        assertEquals(Math.PI * 100, area(circle), Math.PI * 100 * 6e-4);
        assertEquals(2 * Math.PI * 10, circle.length(FINE), 0.02);
    }

    @Test
    void aRoundedRectangle() {
        Path rect = Svg.shape("<rect width='20' height='10' rx='2'/>").path();
        assertEquals(200 - (4 - Math.PI) * 4, area(rect), 5e-3);
        assertEquals(2 * (16 + 6) + 2 * Math.PI * 2, rect.length(FINE), 5e-3);
    }

    @Test
    void aQuarterArc() {
        Path arc = Svg.shape("<path d='M0 0A30 30 0 0 1 30 30'/>").path();
        assertEquals(Math.PI * 15, arc.length(FINE), 0.01);
    }

    @Test
    void theStrokeOfACircleIsARing() {
        Area ring = Svg.shape("<circle cx='50' cy='25' r='10' fill='none' stroke='red' stroke-width='2'/>")
                .strokeOutline();
        Path resolved = Path.of(new java.awt.geom.Area(ring.outline().toShape(ring.rule())));
        assertEquals(Math.PI * (11 * 11 - 9 * 9), area(resolved), 0.1);
        Box box = ring.outline().bounds();
        assertTrue(new Box(-11, -11, 11, 11).contains(box, 0.005), box.toString());
        assertTrue(box.contains(new Box(-11, -11, 11, 11), 0.005), box.toString());
    }

    @Test
    void aLineWithItsCaps() {
        String line = "<path d='M10 10H30' stroke='red' stroke-width='2' stroke-linecap='";
        assertEquals(40, area(Svg.shape(line + "butt'/>").strokeOutline().outline()), 1e-6);
        assertEquals(44, area(Svg.shape(line + "square'/>").strokeOutline().outline()), 1e-6);
        assertEquals(
                40 + Math.PI, area(Svg.shape(line + "round'/>").strokeOutline().outline()), 2e-3);
    }

    @Test
    void dashesAreDrawn() {
        DrawnShape line = Svg.shape("<path d='M0 10H20' stroke='red' stroke-width='2' stroke-dasharray='3 2'/>");
        assertEquals(4 * 3 * 2, area(line.strokeOutline().outline()), 1e-6);
        assertEquals(4, line.strokeOutline().outline().flatten(FINE).size());
    }

    @Test
    void aStrokeIsScaledWithItsShape() {
        DrawnShape line = Svg.shape("<path d='M0 0H10' transform='scale(2 3)' stroke='red' stroke-width='1'/>");
        assertEquals(20 * 3, area(line.strokeOutline().outline()), 1e-5);
        assertEquals(10, line.local().length(FINE), 1e-9);
    }

    @Test
    void aSizeOfNothingDrawsNothing() {
        assertEquals(List.of(), Svg.drawn("<circle r='0' stroke='red'/><rect width='0' height='5' stroke='red'/>"));
    }

    @Test
    void textWithoutAFamilyAsksForTheGenericOne() {
        assertEquals(
                List.of("sans-serif"),
                Svg.text("<text>a</text>").lines().get(0).runs().get(0).font().families());
    }

    @Test
    void aRedrawLeavesNothingBehind() {
        SvgDrawing drawing = Svg.drawing("<g style='stroke:${s}'><rect x='${x}' width='5' height='2'/></g>"
                + "<style>g > rect { fill: none }</style>");
        dev.quoin.problem.Problems problems = new dev.quoin.problem.Problems();
        List<List<Drawn>> first = drawing.redraw(List.of("stroke:red", "1"), problems);
        drawing.redraw(List.of("stroke:none", "40"), problems);
        drawing.draw(problems);
        assertEquals(first, drawing.redraw(List.of("stroke:red", "1"), problems));
        assertEquals(List.of(), problems.sorted());
        assertTrue(((DrawnShape) first.get(0).get(0)).painted());
    }

    private static double area(Path path) {
        return Math.abs(
                path.flatten(FINE).stream().mapToDouble(Polyline::signedArea).sum());
    }
}
