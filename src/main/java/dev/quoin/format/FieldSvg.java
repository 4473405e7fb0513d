package dev.quoin.format;

import dev.quoin.drawing.SvgWriter;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Point;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;

/**
 * Drawings in a field that are no plates: outlines for the pointing beam, and the arrow. The page is the field.
 *
 * @param field its side, mm
 */
public record FieldSvg(double field) {
    /** The drawing of the arrow is 24 mm wide and 20 mm high where the field has room for it. */
    private static final Box ARROW_BOX = Box.centred(24, 20);

    private static final List<Point> ARROW = List.of(
            new Point(-12, -7),
            new Point(6, -7),
            new Point(6, -10),
            new Point(12, -6),
            new Point(6, -2),
            new Point(6, -5),
            new Point(-12, -5));
    private static final List<Point> LETTER = List.of(
            new Point(-4, 0),
            new Point(-2, 0),
            new Point(-2, 4),
            new Point(2, 4),
            new Point(2, 6),
            new Point(-2, 6),
            new Point(-2, 8),
            new Point(4, 8),
            new Point(4, 10),
            new Point(-4, 10));

    /**
     * Writes outlines.
     *
     * @param outlines in the field (origin at its centre, y up), mm, by their ids
     */
    public void outlines(OutputStream out, String group, Map<String, Path> outlines) throws IOException {
        Affine toPage = new Affine(1, 0, 0, -1, field / 2, field / 2);
        SvgWriter svg = new SvgWriter(out).start(field, field);
        svg.group(group, "fill", "none", "stroke", "#000000", "stroke-width", "0.1");
        for (Map.Entry<String, Path> outline : outlines.entrySet()) {
            svg.path(outline.getValue(), toPage, "id", outline.getKey());
        }
        svg.endGroup();
        svg.end();
    }

    /** An arrow along the field's x axis, and the letter F upright above it, at the field's centre. */
    public void arrow(OutputStream out) throws IOException {
        double scale = Math.min(1, field / 2 / ARROW_BOX.width());
        Affine size = Affine.scale(scale, scale);
        outlines(
                out,
                "field",
                new java.util.TreeMap<>(Map.of(
                        "arrow",
                        polygon(ARROW).transform(size),
                        "letter-F",
                        polygon(LETTER).transform(size))));
    }

    private static Path polygon(List<Point> points) {
        Path.Builder path =
                Path.builder().moveTo(points.get(0).x(), points.get(0).y());
        points.stream().skip(1).forEach(point -> path.lineTo(point.x(), point.y()));
        return path.close().build();
    }
}
