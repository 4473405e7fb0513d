package dev.quoin.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Path;
import dev.quoin.problem.Problems;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class SvgWriterTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final SvgWriter writer = new SvgWriter(out);

    @Test
    void aPlateIsGroupsAndPaths() throws IOException {
        Path path = Path.builder()
                .moveTo(0, 0)
                .lineTo(1, 0)
                .lineTo(1, 1.23456)
                .quadTo(2, 2, 3, 0)
                .cubicTo(1, 2, 3, 4, -0.0001, 6)
                .close()
                .build();
        writer.start(100, 100).group("step-1-engrave", "fill", "#000000");
        writer.path(path, Affine.translate(0, 0.5), "id", "a").endGroup().end();
        assertEquals("""
                <?xml version="1.0" encoding="UTF-8"?>
                <svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100">
                <g id="step-1-engrave" fill="#000000">
                <path id="a" d="M0 0.5L1 0.5 1 1.735Q2 2.5 3 0.5C1 2.5 3 4.5 0 6.5Z"/>
                </g>
                </svg>
                """, text());
    }

    /** Lines by themselves are written in one go; what stands between them is not. */
    @Test
    void eachPieceBeginsWithAMove() throws IOException {
        Path path = Path.builder()
                .moveTo(0, 0)
                .lineTo(1, -2)
                .moveTo(3, 0)
                .lineTo(4, 0)
                .moveTo(5, 0)
                .lineTo(6, 0)
                .lineTo(7, 0)
                .moveTo(1, 1)
                .lineTo(2, 1)
                .close()
                .moveTo(8, 0)
                .lineTo(9, 1234.5)
                .build();
        writer.startPath()
                .append(path, Affine.translate(1, 1))
                .endPath()
                .start(1, 1)
                .end();
        assertTrue(text().contains("\"M1 1L2 -1M4 1L5 1M6 1L7 1 8 1M2 2L3 2ZM9 1L10 1235.5\""), text());
    }

    @Test
    void aValueCannotLeaveItsAttribute() throws IOException {
        writer.start(1, 1)
                .group("Tom & \"Jo\" <3\n\u0001\uD83D\uDE00")
                .endGroup()
                .end();
        assertTrue(text().contains("id=\"Tom &amp; &quot;Jo&quot; &lt;3&#10;\uFFFD\uD83D\uDE00\""), text());
    }

    @Test
    void groupsMustBeClosed() throws IOException {
        writer.start(1, 1).group("a");
        assertThrows(IllegalStateException.class, writer::end);
        writer.endGroup();
        assertThrows(IllegalStateException.class, writer::endGroup);
    }

    @Test
    void whatIsWrittenCanBeDrawn() throws IOException {
        writer.start(100, 50)
                .path(PathData.parse("M60 5h20v10h-20Z"), Affine.IDENTITY)
                .end();
        Problems problems = new Problems();
        List<Drawn> drawn = SvgDrawing.read("p.svg", out.toByteArray(), problems)
                .orElseThrow()
                .draw(problems);
        assertEquals(List.of(), problems.sorted());
        assertEquals(10, ((DrawnShape) drawn.get(0)).path().bounds().minX(), 1e-5);
    }

    @Property(tries = 200, seed = "2026")
    void pathDataComesBackToAThousandth(
            @ForAll @Size(min = 8, max = 40) List<@DoubleRange(min = -300, max = 300) Double> xy) throws IOException {
        Path.Builder path = Path.builder().moveTo(xy.get(0), xy.get(1));
        for (int i = 2; i + 5 < xy.size(); i += 6) {
            path.cubicTo(xy.get(i), xy.get(i + 1), xy.get(i + 2), xy.get(i + 3), xy.get(i + 4), xy.get(i + 5));
        }
        PathEnds written = new PathEnds();
        path.build().forEach(written);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        new SvgWriter(bytes).start(1, 1).path(path.build(), Affine.IDENTITY).end();
        String d = bytes.toString(StandardCharsets.UTF_8).replaceAll("(?s).* d=\"([^\"]*)\".*", "$1");
        PathEnds read = new PathEnds();
        PathData.parse(d).forEach(read);
        assertEquals(written.all.size(), read.all.size());
        for (int i = 0; i < read.all.size(); i++) {
            assertTrue(written.all.get(i).distance(read.all.get(i)) < 0.00075);
        }
    }

    private String text() {
        return out.toString(StandardCharsets.UTF_8);
    }
}
