package dev.quoin.art;

import dev.quoin.drawing.SvgDrawing;
import dev.quoin.geometry.Area;
import dev.quoin.problem.Problems;
import java.util.List;

/** The letters of a drawing without placeholders, as a template would mark them. */
public final class SuiteLetters {
    private SuiteLetters() {}

    /** What they cover, in item coordinates, mm; nothing where there are errors. */
    public static List<Area> of(byte[] svg, Problems problems) {
        Merged merged = Merged.columns("Name");
        return SvgDrawing.read("t.svg", svg, problems)
                .flatMap(drawing -> merged.compile(drawing, problems))
                .flatMap(template -> merged.drawn(template, problems, "x"))
                .map(art -> art.marks().stream()
                        .filter(mark -> !mark.constant())
                        .map(Mark::area)
                        .toList())
                .orElse(List.of());
    }
}
