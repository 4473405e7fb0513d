package dev.quoin.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What cannot be marked is said, with the element's name and line, and never dropped. */
class SvgProblemsTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            <rect id="x" width="1" height="1" opacity=".5"/>                | <rect id="x"> is see-through (opacity below 1)
            <g id="g" style="opacity:0.9"><rect width="1" height="1"/></g>  | <g id="g"> is see-through (opacity below 1)
            <rect id="x" width="1" height="1" fill-opacity=".5"/>           | <rect id="x"> has a see-through fill
            <rect width="1" height="1" stroke="red" stroke-opacity=".5"/>   | <rect> has a see-through stroke
            <rect width="1" height="1" fill="url(#g)"/>                     | <rect> has a gradient or pattern as its fill, which cannot be marked
            <path d="M0 0H1" fill="none" stroke="url(#g)"/>                 | <path> has a gradient or pattern as its stroke, which cannot be marked
            <circle id="c" r="1" filter="url(#f)"/>                         | <circle id="c"> has a filter, which cannot be marked
            <circle id="c" r="1" mask="url(#f)"/>                           | <circle id="c"> has a mask, which cannot be marked
            <circle id="c" r="1" clip-path="url(#f)"/>                      | <circle id="c"> has clip-path "f", and no <clipPath> of the drawing has that id
            <line x2="5" stroke="red" marker-end="url(#m)"/>                | <line> has a marker-end, which cannot be marked
            <image id="p" width="9" height="9" href="p.png"/>               | <image id="p"> is a raster picture, which cannot be marked
            <image id="p" width="9" height="9" href="p.svg"/>               | <image id="p"> shows another drawing, which is not read here
            <foreignObject width="9" height="9"/>                           | <foreignObject> is no shape that can be marked
            <flowRoot><flowPara>a</flowPara></flowRoot>                     | <flowRoot> is no shape that can be marked
            <use id="u" href="#nowhere"/>                                   | <use id="u"> refers to "#nowhere", which is not in the drawing
            <use id="u" href="other.svg#a"/>                                | <use id="u"> refers to another file, "other.svg#a"
            <use id="u" href="http://localhost/a.svg#a"/>                   | <use id="u"> refers to another file, "http://localhost/a.svg#a"
            <rect x="abc" width="1" height="1"/>                            | <rect> has x="abc", which is not understood
            <rect width="-1" height="1"/>                                   | <rect> has width="-1", below 0
            <circle r="1" transform="turn(3)"/>                             | <circle> has transform="turn(3)", which is not understood
            <path d="M0 0L"/>                                               | <path> has d="M0 0L", which is not path data, from character 6
            <polygon points="1 2 3"/>                                       | <polygon> has points="1 2 3", which is not understood
            <rect width="1" height="1" fill="rgba(1,2,3,.5)"/>              | <rect> has fill="rgba(1,2,3,.5)", which is not understood
            <rect width="1" height="1" style="fill:red;stroke:#12"/>        | <rect> has 'stroke:#12' in its style, which is not understood
            <rect width="1" height="1" style="transform: rotate(3deg)"/>    | <rect> sets 'transform' in its style, which is not supported
            <line x2="5" stroke="red" style="vector-effect:non-scaling-stroke"/> | <line> has a stroke that is not scaled with it (vector-effect)
            <path d="M0 0H90000" stroke="red" stroke-dasharray=".001"/>     | <path> has too many dashes
            <rect x="1e30" width="1" height="1"/>                           | <rect> stands more than 100 m away from the page
            <rect width="1" height="2" style="height: 1px"/>                | <rect> sets 'height' in its style, which is not supported
            <svg width="9" height="9" transform="scale(2)"/>                | <svg> has a transform, which is not supported there
            <text dx="1 2">a</text>                                         | <text> sets the place of each letter (dx="1 2"), which is not supported yet
            <text x="1 2 3">abc</text>                                      | <text> sets the place of each letter (x="1 2 3"), which is not supported yet
            <text>a<tspan dy="3">b</tspan></text>                           | <tspan> has dy, which is not supported yet
            <text>a<tspan y="3">b</tspan></text>                            | <tspan> has a y but no x
            <text rotate="3">a</text>                                       | <text> has rotate, which is not supported yet
            <text textLength="3">a</text>                                   | <text> has textLength, which is not supported yet
            <text letter-spacing="3">a</text>                               | <text> sets letter-spacing: 3, which is not supported yet
            <text word-spacing="3">a</text>                                 | <text> sets word-spacing: 3, which is not supported yet
            <text><tspan baseline-shift="super">a</tspan></text>            | <tspan> sets baseline-shift: super, which is not supported yet
            <text text-decoration="underline">a</text>                      | <text> sets text-decoration: underline, which is not supported yet
            <text writing-mode="tb">a</text>                                | <text> sets writing-mode: tb, which is not supported yet
            <text dominant-baseline="middle">a</text>                       | <text> sets dominant-baseline: middle, which is not supported yet
            <text><textPath href="#q">a</textPath></text>                   | <textPath> runs along "#q", which is no path or shape of the drawing
            <text><textPath href="#p">a</textPath></text>                   | <textPath> runs along "#p", which has no length
            <text><textPath href="#p2" side="right">a</textPath></text>     | <textPath> has side="right", which is not supported
            <text><textPath href="#p2" method="stretch">a</textPath></text> | <textPath> has method="stretch", which is not supported
            <text>b<textPath href="#p2">a</textPath></text>                 | <textPath> has other letters beside those along its path
            <text><textPath href="#p2"><tspan dy="2">a</tspan></textPath></text> | <tspan> has dy, which is not supported yet
            <text>a<tspan fill="none">b</tspan></text>                      | <tspan> is painted in another way than the text before it
            """)
    void anErrorNamesTheElementAndItsLine(String body, String message) {
        String problems =
                Svg.problems(Svg.page("<g/>\n  " + body + "<path id='p' d='M0 0'/><path id='p2' d='M0 0H9'/>"));
        assertTrue(problems.startsWith("t.svg:3:"), problems);
        assertTrue(problems.contains(": " + message + "; "), problems);
        assertEquals(1, problems.lines().count(), problems);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            width="100" height="50"                            | <svg> has width="100"
            width="100px" height="50px" viewBox="0 0 100 50"   | <svg> has width="100px"
            width="100%" height="100%" viewBox="0 0 100 50"    | <svg> has width="100%"
            viewBox="0 0 100 50"                               | <svg> has no width
            width="100mm" height="50mm" viewBox="0 0 100 60"   | differ in proportion
            width="100mm" height="50mm" viewBox="0 0 100 0"    | viewBox="0 0 100 0" is not four numbers
            width="0mm" height="50mm"                          | width of 0mm cannot be
            width="${w}mm" height="50mm"                       | <svg> has width="${w}mm"
            """)
    void aPageNeedsARealSize(String size, String message) {
        String problems = Svg.problems("\n<svg xmlns='http://www.w3.org/2000/svg' " + size + "/>");
        assertTrue(problems.startsWith("t.svg:2:1: "), problems);
        assertTrue(problems.contains(message), problems);
    }

    @Test
    void withoutAViewBoxAUnitIsAPixel() {
        SvgDrawing drawing = SvgDrawing.read(
                        "t.svg",
                        Svg.bytes("<svg xmlns='http://www.w3.org/2000/svg' width='10cm' height='72pt'/>"),
                        new Problems())
                .orElseThrow();
        assertEquals(25.4 / 96, drawing.millimetresPerUnit(), 1e-12);
        assertEquals(new Page(100, 25.4), drawing.page());
    }

    @Test
    void aPlaceholderHasToBeClosedAndMustNotStandInAStyleSheet() {
        assertEquals(
                "t.svg:4:4: the placeholder '${x' has no closing brace; write it as ${name}",
                Svg.problems(Svg.page("<g/>\n<rect width='1'\nx='${x' height='1'/>")));
        assertEquals(
                "t.svg:3:8: the placeholder '${x ' has no closing brace; write it as ${name}",
                Svg.problems(Svg.page("<text>\nHello, ${x </text>").replace("Hello, ${x ", "Hello, ${x ")));
        assertEquals(
                "t.svg:3:10: a placeholder cannot stand in a <style> element;"
                        + " put it into the element's own style, class or attribute",
                Svg.problems(Svg.page("<style>\n.a {fill:${c}}</style>")));
    }

    @Test
    void aMergedValueThatDoesNotFitItsAttributeIsAnError() {
        assertEquals(
                List.of("t.svg:2:1: <rect id=\"r\"> has x=\"abc\", which is not understood; correct that value"),
                redrawProblems("<rect id='r' x='${x}' width='1' height='1'/>", "abc"));
        assertEquals(
                List.of("t.svg:2:1: <rect> has 'fill:no colour' in its style, which is not understood;"
                        + " use a plain colour, number or word"),
                redrawProblems("<rect style='fill:${c}' width='1' height='1'/>", "fill:no colour"));
        assertEquals(
                List.of("t.svg:2:1: <use> refers to \"#c\", which is not in the drawing; correct its href"),
                redrawProblems("<use href='#${m}'/><defs><rect id='a' width='1' height='1'/></defs>", "#c"));
    }

    @Test
    void aValueCannotChangeTheStructure() {
        String value = "\"/><rect width='9' height='9'/> & ]]> <!-- ";
        List<List<Drawn>> parts = Svg.redrawn("<rect class='${c}' width='1' height='1'/>", value);
        assertEquals(1, parts.get(0).size());
    }

    @Test
    void whatAnEditorKeepsForItselfPassesSilently() {
        String body = """
                <metadata><x xmlns="urn:other">a</x></metadata><title>t</title><desc>d</desc>
                <sodipodi:namedview xmlns:sodipodi="http://sodipodi.sourceforge.net/DTD/sodipodi-0.dtd" id="n"/>
                <defs><linearGradient id="l"/><clipPath id="p"/><filter id="f"/></defs>
                <switch><foreignObject requiredExtensions="urn:x"/><g><circle r="1"/></g></switch>
                <image display="none" href="p.png"/>
                """;
        assertEquals(1, Svg.drawn(body).size());
    }

    @Test
    void scriptsAndAnimationAreLeftOutWithAWarning() {
        String problems = Svg.problems(
                Svg.page(
                        "<script>alert(1)</script><rect onclick='a()' width='1' height='1'><animate attributeName='x'/></rect>"));
        assertEquals(
                3, problems.lines().filter(line -> line.contains(": warning: ")).count(), problems);
        assertEquals(3, problems.lines().count());
    }

    @Test
    void allProblemsAreToldInOneGo() {
        String problems = Svg.problems(Svg.page(
                "<rect x='a' width='1' height='1'/>\n<g opacity='.3'>\n<image href='a.png'/></g>\n<rect y='b'/>"));
        assertEquals(4, problems.lines().count(), problems);
    }

    private static List<String> redrawProblems(String body, String value) {
        Problems problems = new Problems();
        Svg.drawing(body).redraw(List.of(value), problems);
        return problems.sorted().stream().map(Problem::toString).toList();
    }
}
