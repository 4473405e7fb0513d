package dev.quoin.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Short ways to write a drawing in a test: a page of 100 x 50 mm, one unit a mm. */
final class Svg {
    static final String START = "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\""
            + " width=\"100mm\" height=\"50mm\" viewBox=\"0 0 100 50\">\n";

    private Svg() {}

    static String page(String body) {
        return START + body + "\n</svg>";
    }

    static SvgDrawing drawing(String body) {
        Problems problems = new Problems();
        return SvgDrawing.read("t.svg", bytes(page(body)), problems)
                .orElseThrow(() -> new AssertionError(problems.sorted()));
    }

    /** What a drawing without problems shows. */
    static List<Drawn> drawn(String body) {
        Problems problems = new Problems();
        List<Drawn> drawn = drawing(body).draw(problems);
        assertEquals(List.of(), problems.sorted());
        return drawn;
    }

    static DrawnShape shape(String body) {
        return (DrawnShape) drawn(body).get(0);
    }

    static DrawnText text(String body) {
        return (DrawnText) drawn(body).get(0);
    }

    static List<List<Drawn>> redrawn(String body, String... values) {
        Problems problems = new Problems();
        List<List<Drawn>> redrawn = drawing(body).redraw(List.of(values), problems);
        assertEquals(List.of(), problems.sorted());
        return redrawn;
    }

    /** The problems of reading and drawing, one line each. */
    static String problems(String svg) {
        Problems problems = new Problems();
        SvgDrawing.read("t.svg", bytes(svg), problems).ifPresent(drawing -> drawing.draw(problems));
        return String.join(
                "\n", problems.sorted().stream().map(Problem::toString).toList());
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
