package dev.quoin.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.FillRule;
import dev.quoin.problem.Problems;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Given a small drawing, then these shapes in item coordinates: mm, the page's centre, y up. */
class SvgDrawingTest {
    @Test
    void aRectangleLandsAroundThePagesCentreWithYUp() {
        DrawnShape rect = Svg.shape("<rect id='r' class='cut deep' x='60' y='5' width='20' height='10'/>");
        assertBox(10, 10, 30, 20, rect.path().bounds());
        assertTrue(rect.filled());
        assertTrue(rect.strokeOutline().isEmpty());
        assertEquals(
                new Names("r", List.of("cut", "deep")), rect.element().names().get(0));
        assertEquals("t.svg:2:1", rect.element().place().toString());
        assertEquals(Svg.shape("<rect x='60' y='5' width='20' height='10'/>").local(), rect.local());
    }

    @Test
    void theLabelThatAnEditorGaveALayerIsAmongItsNamesAndNoPlaceholder() {
        DrawnShape rect = Svg.shape("<g id='layer2' xmlns:e='http://editor.example' e:label=' Cut ${x ' e:mode='layer'>"
                + "<rect width='9' height='9'/></g>");
        assertEquals(
                new Names("layer2", List.of(), "Cut ${x"),
                rect.element().names().get(1));
    }

    @Test
    void aPageInInchesWithAViewBoxOfItsOwn() {
        SvgDrawing drawing = SvgDrawing.read(
                        "t.svg",
                        Svg.bytes(
                                "<svg xmlns='http://www.w3.org/2000/svg' width='2in' height='1in' viewBox='10 20 200 100'>"
                                        + "<circle cx='110' cy='70' r='10'/></svg>"),
                        new Problems())
                .orElseThrow();
        assertEquals(50.8, drawing.page().width(), 1e-9);
        assertEquals(0.254, drawing.millimetresPerUnit(), 1e-9);
        DrawnShape circle = (DrawnShape) drawing.draw(new Problems()).get(0);
        assertBox(-2.54, -2.54, 2.54, 2.54, circle.path().bounds());
    }

    @Test
    void stylesComeFromSheetsClassesAndParents() {
        List<Drawn> drawn = Svg.drawn("""
                <style>.line { fill: none; stroke: #f00 } #b { fill-rule: evenodd }</style>
                <g class="line" stroke-width="2"><path d="M10 10H30"/></g>
                <g style="fill:none"><path id="b" d="M0 0H5V5Z" style="fill:blue"/><rect width="3" height="4"/></g>
                <g display="none"><rect width="3" height="4"/></g>
                """);
        assertEquals(3, drawn.size());
        DrawnShape line = (DrawnShape) drawn.get(0);
        assertFalse(line.filled());
        assertBox(-40, 14, -20, 16, line.strokeOutline().outline().bounds());
        assertEquals(List.of("line"), line.element().names().get(1).classes());
        DrawnShape blue = (DrawnShape) drawn.get(1);
        assertTrue(blue.filled());
        assertEquals(FillRule.EVEN_ODD, blue.rule());
        assertFalse(((DrawnShape) drawn.get(2)).painted());
    }

    @Test
    void aUseLeadsThroughItselfToTheRoot() {
        DrawnShape dot = Svg.shape("""
                <defs><g id="dots"><circle id="dot" r="2"/></g></defs>
                <g id="above"><use id="here" href="#dots" x="50" y="25" transform="translate(10 0)"/></g>
                """);
        assertBox(8, -2, 12, 2, dot.path().bounds());
        assertEquals(
                List.of("dot", "dots", "here", "above", ""),
                dot.element().names().stream().map(Names::id).toList());
    }

    @Test
    void symbolsAndNestedDrawingsFitTheirViewBox() {
        List<Drawn> drawn = Svg.drawn("""
                <symbol id="s" viewBox="0 0 10 10"><rect width="10" height="10"/></symbol>
                <use xlink:href="#s" x="50" y="25" width="20" height="20"/>
                <svg x="0" y="0" width="20" height="10" viewBox="0 0 1 1"><rect width="1" height="1"/></svg>
                """);
        assertBox(0, -20, 20, 0, ((DrawnShape) drawn.get(0)).path().bounds());
        assertBox(-45, 15, -35, 25, ((DrawnShape) drawn.get(1)).path().bounds());
    }

    @Test
    void placeholdersStandInAnyAttribute() {
        String body = """
                <rect x="${x}" y="5" width="20" height="10"/>
                <circle r="1" style="fill:${c}"/>
                <g transform="rotate(${a})" data-when="${w}"><rect width="10" height="2"/><rect width="1" height="1"/></g>
                <path class="${p}" d="M0 0H5V5Z"/>
                """;
        SvgDrawing drawing = Svg.drawing(body);
        assertEquals(
                List.of("x", "style", "transform", "class"),
                drawing.variableAttributes().stream()
                        .map(VariableAttribute::name)
                        .toList());
        assertEquals(
                List.of(new DrawnVariable(0), new DrawnVariable(1), new DrawnVariable(2), new DrawnVariable(3)),
                Svg.drawn(body));
        List<List<Drawn>> parts = Svg.redrawn(body, "60", "fill:none", "rotate(90)", "cut");
        assertBox(10, 10, 30, 20, ((DrawnShape) parts.get(0).get(0)).path().bounds());
        assertFalse(((DrawnShape) parts.get(1).get(0)).filled());
        assertBox(-52, 15, -50, 25, ((DrawnShape) parts.get(2).get(0)).path().bounds());
        assertEquals(2, parts.get(2).size());
        assertEquals(
                List.of("cut"),
                ((DrawnShape) parts.get(3).get(0)).element().names().get(0).classes());
    }

    @Test
    void aTextIsLinesAndRuns() {
        DrawnText text = Svg.text("""
                <text id="t" data-fit="box" text-anchor="middle" font-size="5" font-family="'My Sans', serif">
                  <tspan x="10" y="20">Dear  ${name}, <tspan font-weight="bold">hello</tspan> </tspan>
                  <tspan x="10" y="30" font-style="italic">you</tspan>
                </text>
                """);
        assertEquals(2, text.lines().size());
        TextLine first = text.lines().get(0);
        assertEquals(TextAnchor.MIDDLE, first.anchor());
        assertEquals("Dear ${name}, ", first.runs().get(0).content().source());
        assertEquals("hello", first.runs().get(1).content().source());
        assertEquals(
                new FontRequest(List.of("My Sans", "serif"), 700, false),
                first.runs().get(1).font());
        assertEquals(30, text.lines().get(1).y());
        assertTrue(text.filled());
        assertEquals("box", text.element().data("fit").orElseThrow().source());
    }

    private static void assertBox(double minX, double minY, double maxX, double maxY, Box box) {
        Box wanted = new Box(minX, minY, maxX, maxY);
        assertTrue(wanted.contains(box, 1e-5) && box.contains(wanted, 1e-5), box + " is not " + wanted);
    }
}
