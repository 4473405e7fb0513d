package dev.quoin.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.geometry.Polyline;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands outside a clip path is cut off for real. CSS Masking 1, section 7, as Chromium paints it. */
class SvgClipTest {
    private static final List<String> DRAWINGS = List.of(
            "<clipPath id='c'><circle cx='100' cy='100' r='60'/></clipPath>"
                    + "<rect x='70' y='20' width='120' height='120' clip-path='url(#c)'/>",
            "<clipPath id='c'><circle cx='100' cy='100' r='60'/></clipPath>"
                    + "<g clip-path='url(#c)' transform='rotate(20 100 100)'><path d='M0 100C80 0 120 200 200 100'"
                    + " fill='none' stroke='red' stroke-width='25'/><rect x='90' width='40' height='200'/></g>",
            "<clipPath id='c' clipPathUnits='objectBoundingBox'><circle cx='.5' cy='.5' r='.5'/></clipPath>"
                    + "<rect x='20' y='60' width='150' height='80' style='clip-path:url(#c)'/>",
            "<clipPath id='c' clipPathUnits='objectBoundingBox'><rect x='.25' y='.1' width='.5' height='.7'/></clipPath>"
                    + "<g clip-path='url(#c)'><circle cx='60' cy='60' r='40'/><circle cx='140' cy='130' r='50'/></g>",
            "<clipPath id='c'><path clip-rule='evenodd'"
                    + " d='M100 10L40 190L190 70H10L160 190Z'/></clipPath><rect width='200' height='200' clip-path='url(#c)'/>",
            "<clipPath id='c'><path d='M100 10L40 190L190 70H10L160 190Z'/></clipPath>"
                    + "<rect width='200' height='200' clip-path='url(#c)'/>",
            "<style>.c { clip-path: url(#c) }</style><clipPath id='c' transform='translate(30 30)'>"
                    + "<rect width='80' height='80' transform='rotate(10)'/></clipPath><circle class='c' cx='90' cy='90' r='60'/>",
            "<clipPath id='d'><rect x='50' y='50' width='100' height='100'/></clipPath>"
                    + "<clipPath id='c' clip-path='url(#d)'><circle cx='60' cy='100' r='50'/>"
                    + "<circle cx='140' cy='100' r='50'/></clipPath><rect width='200' height='200' clip-path='url(#c)'/>",
            "<clipPath id='d'><rect x='60' y='50' width='30' height='90'/></clipPath><defs><circle id='o' cx='70' cy='90' r='50'/></defs>"
                    + "<clipPath id='c'><use href='#o' x='40' clip-path='url(#d)'/></clipPath>"
                    + "<rect width='200' height='200' clip-path='url(#c)'/>",
            "<clipPath id='c'><circle cx='100' cy='100' r='60' visibility='hidden'/><rect width='90' height='90'/>"
                    + "<rect x='95' width='90' height='90' display='none'/></clipPath><rect width='200' height='200' clip-path='url(#c)'/>",
            "<clipPath id='c'/><rect width='200' height='200' clip-path='url(#c)'/><circle r='30'/>",
            "<svg x='30' y='40' width='90' height='70'><circle cx='40' cy='40' r='60'/></svg>",
            "<symbol id='s' viewBox='0 0 10 10' preserveAspectRatio='xMidYMid slice'><circle cx='5' cy='5' r='7'/></symbol>"
                    + "<use href='#s' x='20' y='20' width='160' height='70' transform='rotate(10)'/>",
            "<clipPath id='c'><path d='M20 20H180V180H20ZM60 60V140H140V60Z'/></clipPath>"
                    + "<circle cx='100' cy='100' r='62' clip-path='url(#c)'/>");

    @TempDir
    private Path folder;

    @Test
    @Tag("browser")
    void whatShowsIsWhatChromiumPaints() throws IOException, InterruptedException {
        List<byte[]> drawings = new ArrayList<>();
        for (String body : DRAWINGS) {
            drawings.add(Svg.bytes("<svg xmlns='http://www.w3.org/2000/svg' width='200mm' height='200mm'"
                    + " viewBox='0 0 200 200'>" + body + "</svg>"));
        }
        Coverage chromium = Coverage.byChromium(drawings, folder);
        List<String> failures = new ArrayList<>();
        for (int i = 0; i < drawings.size(); i++) {
            Problems problems = new Problems();
            double overlap = chromium.overlap(i, Coverage.ours(drawings.get(i), problems));
            if (overlap < 0.99 || problems.hasErrors()) {
                failures.add(overlap + " " + problems.sorted() + " " + DRAWINGS.get(i));
            }
        }
        assertEquals(List.of(), failures);
    }

    @Test
    void aFollowedPathIsCutAtTheEdgeAndNotClosedAlongIt() {
        DrawnShape circle = Svg.shape("<clipPath id='c'><rect width='50' height='50'/></clipPath>"
                + "<circle cx='50' cy='25' r='10' fill='none' stroke='red' clip-path='url(#c)'/>");
        List<Polyline> half = circle.shownPath().flatten(1e-3);
        assertEquals(1, half.size());
        assertTrue(!half.get(0).closed());
        assertEquals(Math.PI * 10, half.get(0).length(), 0.02);
    }

    @Test
    void aShapeThatShowsWholeKeepsItsCurves() {
        DrawnShape circle = Svg.shape("<clipPath id='c'><rect width='50' height='50'/></clipPath>"
                + "<g clip-path='url(#c)'><circle cx='20' cy='25' r='10'/></g>");
        assertTrue(circle.clip().isEmpty());
        assertEquals(circle.path(), circle.shownPath());
        assertEquals(circle.path(), circle.interior().outline());
    }

    @Test
    void aPlaceholderInAClipPathDrawsWhatItCutsAnew() {
        String body = "<clipPath id='c'><rect width='${w}' height='50'/></clipPath>"
                + "<g clip-path='url(#c)'><rect width='30' height='10'/></g><rect width='5' height='5'/>";
        DrawnShape cut = (DrawnShape) partWithShapes(Svg.redrawn(body, "12")).get(0);
        assertEquals(12, cut.interior().outline().bounds().width(), 1e-6);
        assertEquals(2, Svg.drawn(body).size());
        assertTrue(Svg.drawn(body).get(0) instanceof DrawnVariable);
    }

    @Test
    void aClippedGroupWithAPlaceholderInsideStaysClipped() {
        String body =
                "<style>.k { clip-path: url(#c) }</style><clipPath id='c'><rect width='10' height='50'/></clipPath>"
                        + "<g class='k'><rect width='${w}' height='10'/></g>";
        DrawnShape cut = (DrawnShape) partWithShapes(Svg.redrawn(body, "12")).get(0);
        assertEquals(10, cut.interior().outline().bounds().width(), 1e-6);
    }

    @Test
    void clipPathsThatLeadBackToThemselvesAreAnError() {
        String problems =
                Svg.problems(Svg.page("<clipPath id='a'><rect width='9' height='9' clip-path='url(#b)'/></clipPath>"
                        + "<clipPath id='b'><rect width='9' height='9' clip-path='url(#a)'/></clipPath>"
                        + "<rect width='9' height='9' clip-path='url(#a)'/>"));
        assertTrue(problems.contains("is cut by clip paths that lead back to themselves"), problems);
    }

    private static List<Drawn> partWithShapes(List<List<Drawn>> parts) {
        return parts.stream().filter(part -> !part.isEmpty()).findFirst().orElseThrow();
    }
}
