package dev.quoin.cli;

import dev.quoin.drawing.DrawnShape;
import dev.quoin.drawing.SvgDrawing;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Point;
import dev.quoin.geometry.Polyline;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The marks of a plate file as they lie in the field (origin at its centre, y up), by the groups they stand in. */
final class PlateMarks {
    private PlateMarks() {}

    static Map<String, List<Path>> read(java.nio.file.Path file) throws IOException {
        Problems problems = new Problems();
        Map<String, List<Path>> marks = new TreeMap<>();
        SvgDrawing drawing = SvgDrawing.read(file.toString(), Files.readAllBytes(file), problems)
                .orElseThrow();
        for (var drawn : drawing.draw(problems)) {
            DrawnShape shape = (DrawnShape) drawn;
            String group = shape.element().names().stream()
                    .map(names -> names.id())
                    .filter(id -> id.contains("-item-"))
                    .findFirst()
                    .orElseThrow();
            marks.computeIfAbsent(group, made -> new ArrayList<>())
                    .add(shape.local().transform(shape.toItem()));
        }
        return marks;
    }

    /** The points of all marks of a group, moved. */
    static List<Point> points(List<Path> marks, Affine move) {
        List<Point> points = new ArrayList<>();
        for (Path mark : marks) {
            for (Polyline line : mark.transform(move).flatten(0.01)) {
                for (int i = 0; i < line.size(); i++) {
                    points.add(new Point(line.x(i), line.y(i)));
                }
            }
        }
        return points;
    }
}
