package dev.quoin.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.quoin.geometry.Box;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A drawing shown by another is scaled into its box as {@code preserveAspectRatio} of the image says (SVG 1.1, section
 * 5.7): as Chromium lays the same drawing copied in as an {@code svg} with that box. Its own {@code image} takes no heed
 * of the attribute but for {@code none}.
 */
class SvgImageTest {
    private static final String ART = "<svg xmlns='http://www.w3.org/2000/svg' viewBox='10 20 60 30'>"
            + "<path class='cut' id='p' d='M10 20H70V50H10ZM20 25H60V45H20Z' fill-rule='evenodd'/>"
            + "<circle cx='40' cy='35' r='20' fill='none' stroke='red' stroke-width='4'/></svg>";
    private static final List<String> RATIOS = List.of(
            "",
            "none",
            "xMinYMin meet",
            "xMaxYMax",
            "xMinYMid slice",
            "xMaxYMin slice",
            "xMidYMax slice",
            "defer xMidYMid");

    @TempDir
    private Path folder;

    @Test
    @Tag("browser")
    void itIsLaidIntoItsBoxAsChromiumLaysIt() throws IOException, InterruptedException {
        List<byte[]> theirs = new ArrayList<>();
        List<byte[]> ours = new ArrayList<>();
        for (String ratio : RATIOS) {
            for (String size : List.of("width='160' height='60'", "width='90' height='120'")) {
                String place = "x='30' y='40' preserveAspectRatio='" + ratio + "' " + size;
                ours.add(page("<image href='art.svg' " + place + "/>"));
                theirs.add(page(ART.replace("<svg", "<svg " + place)));
            }
        }
        Coverage chromium = Coverage.byChromium(theirs, folder);
        List<String> failures = new ArrayList<>();
        for (int i = 0; i < ours.size(); i++) {
            double overlap = chromium.overlap(i, Coverage.ours(ours.get(i), SvgImageTest::art, new Problems()));
            if (overlap < 0.99) {
                failures.add(overlap + " " + new String(ours.get(i), StandardCharsets.UTF_8));
            }
        }
        assertEquals(List.of(), failures);
    }

    private static byte[] page(String body) {
        return Svg.bytes("<svg xmlns='http://www.w3.org/2000/svg' width='200mm' height='200mm' viewBox='0 0 200 200'>"
                + "<g transform='rotate(10)'>" + body + "</g></svg>");
    }

    @Test
    void itsShapesKeepTheirClassesAndTakeThoseAroundTheImage() {
        Problems problems = new Problems();
        byte[] svg = Svg.bytes(Svg.page(
                "<g class='deep'><image id='crest' href='a.svg' width='60' height='30'" + " data-when='${a}'/></g>"));
        List<Drawn> drawn = SvgDrawing.read("t.svg", svg, SvgImageTest::art, problems)
                .orElseThrow()
                .draw(problems);
        DrawnShape shape = (DrawnShape) drawn.get(0);
        assertEquals("", shape.element().id());
        assertEquals(
                List.of("cut", "deep"),
                shape.element().names().stream()
                        .flatMap(n -> n.classes().stream())
                        .toList());
        assertEquals("crest", shape.element().names().get(3).id());
        assertEquals("${a}", shape.element().data("when").orElseThrow().source());
        assertEquals("a.svg:1:63", shape.element().place().toString());
        assertEquals(new Box(-50, -5, 10, 25), shape.path().bounds());
    }

    private static ArtFile art(String name) {
        return new FoundArt(name, Svg.bytes(ART));
    }
}
