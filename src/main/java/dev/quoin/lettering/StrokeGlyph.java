package dev.quoin.lettering;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A letter of strokes in Hershey's grid: y up from the baseline, capitals 21 units high.
 *
 * @param left where it begins, units; its own zero lies in its middle
 * @param right where the next letter begins, units
 * @param strokes each x0, y0, x1, y1, ...
 */
record StrokeGlyph(double left, double right, List<double[]> strokes) {
    /** Units of the grid in an em: capitals are 0.7 em high, as in most typefaces. */
    static final double EM = 30;

    static final double CAP_HEIGHT = 21;

    /** The same with more strokes. */
    StrokeGlyph with(List<double[]> more) {
        List<double[]> all = new ArrayList<>(strokes);
        all.addAll(more);
        return new StrokeGlyph(left, right, List.copyOf(all));
    }

    /** The same without strokes that lie wholly above a height, such as the dot of an i. */
    StrokeGlyph below(double height) {
        return new StrokeGlyph(
                left,
                right,
                strokes.stream().filter(stroke -> box(stroke).minY() < height).toList());
    }

    Box ink() {
        return strokes.stream().map(StrokeGlyph::box).reduce(Box.EMPTY, Box::union);
    }

    double advance() {
        return (right - left) / EM;
    }

    /** Its strokes in ems, from where the letter begins. */
    Path path() {
        Path.Builder path = Path.builder();
        for (double[] stroke : strokes) {
            path.moveTo((stroke[0] - left) / EM, stroke[1] / EM);
            for (int i = 2; i < stroke.length; i += 2) {
                path.lineTo((stroke[i] - left) / EM, stroke[i + 1] / EM);
            }
        }
        return path.build();
    }

    /** Strokes moved by so many units. */
    static List<double[]> moved(List<double[]> strokes, double dx, double dy) {
        List<double[]> moved = new ArrayList<>();
        for (double[] stroke : strokes) {
            double[] copy = stroke.clone();
            for (int i = 0; i < copy.length; i += 2) {
                copy[i] += dx;
                copy[i + 1] += dy;
            }
            moved.add(copy);
        }
        return moved;
    }

    private static Box box(double[] stroke) {
        Box box = Box.EMPTY;
        for (int i = 0; i < stroke.length; i += 2) {
            box = box.include(stroke[i], stroke[i + 1]);
        }
        return box;
    }
}
