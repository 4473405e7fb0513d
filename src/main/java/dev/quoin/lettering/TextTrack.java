package dev.quoin.lettering;

import dev.quoin.drawing.TextAnchor;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import java.util.Arrays;
import java.util.List;

/**
 * A path that letters stand on. Each letter's middle stands on the path, turned to its direction there (SVG 1.1, section
 * 10.13.3). On a closed path letters may run over its start (SVG 2, section 11.8.3).
 */
public final class TextTrack {
    /** So fine that a letter of 3 mm on a ring of 10 mm is turned to within 0.005 mm. */
    private static final double FINE = 1e-5;

    /** Where the lines that stand for the path begin and end: x, y, and the length so far. */
    private final double[] x;

    private final double[] y;
    private final double[] at;
    private final boolean closed;
    private final double length;

    /** Takes the path, mm, y up. */
    public TextTrack(Path path) {
        List<Polyline> lines = path.flatten(FINE);
        int points = lines.stream().mapToInt(line -> line.size() + 1).sum();
        double[] px = new double[points];
        double[] py = new double[points];
        double[] along = new double[points];
        int count = 0;
        double pen = 0;
        for (Polyline line : lines) {
            for (int i = 0; i < (line.closed() ? line.size() + 1 : line.size()); i++) {
                px[count] = line.x(i % line.size());
                py[count] = line.y(i % line.size());
                pen += i == 0 ? 0 : Math.hypot(px[count] - px[count - 1], py[count] - py[count - 1]);
                along[count++] = pen;
            }
        }
        this.x = Arrays.copyOf(px, count);
        this.y = Arrays.copyOf(py, count);
        this.at = Arrays.copyOf(along, count);
        this.closed = lines.size() == 1 && lines.get(0).closed();
        this.length = pen;
    }

    /** mm. */
    public double length() {
        return length;
    }

    /** How long a line may be that is anchored this far along the path, mm. */
    public double room(double start, TextAnchor anchor) {
        if (closed) {
            return length;
        }
        return Math.max(
                0,
                switch (anchor) {
                    case START -> length - start;
                    case MIDDLE -> 2 * Math.min(start, length - start);
                    case END -> start;
                });
    }

    /** Whether all letters of a line stand on the path, and on a closed one not on each other. */
    public boolean holds(GlyphLine line, double start, TextAnchor anchor) {
        double first = start - part(anchor) * line.advance();
        return closed
                ? line.advance() <= length
                : line.letters().stream()
                        .filter(letter -> !letter.outline().isEmpty())
                        .allMatch(letter -> first + letter.middle() >= 0 && first + letter.middle() <= length);
    }

    /**
     * The letters along the path.
     *
     * @param line at its size, mm
     * @param squeeze the factor of their width
     * @param start how far along the path the line is anchored, mm
     */
    public Path lay(GlyphLine line, double squeeze, double start, TextAnchor anchor) {
        Path.Builder laid = Path.builder();
        double first = start - part(anchor) * line.advance() * squeeze;
        for (GlyphLine.Letter letter : line.letters()) {
            if (!letter.outline().isEmpty()) {
                Affine toMiddle = new Affine(squeeze, 0, 0, 1, -letter.advance() / 2 * squeeze, 0);
                laid.append(letter.outline().transform(toMiddle.then(pose(first + letter.middle() * squeeze))));
            }
        }
        return laid.build();
    }

    /** The move from upright at the origin to a place along the path. */
    private Affine pose(double along) {
        double wanted = closed ? along - Math.floor(along / length) * length : Math.min(Math.max(along, 0), length);
        int found = Arrays.binarySearch(at, wanted);
        int to = Math.min(Math.max(found >= 0 ? found + 1 : -found - 1, 1), at.length - 1);
        // A move between pieces has no length of its own and no direction.
        while (to < at.length - 1 && at[to] == at[to - 1]) {
            to++;
        }
        double step = at[to] - at[to - 1];
        double cos = (x[to] - x[to - 1]) / step;
        double sin = (y[to] - y[to - 1]) / step;
        double rest = wanted - at[to - 1];
        return new Affine(cos, sin, -sin, cos, x[to - 1] + rest * cos, y[to - 1] + rest * sin);
    }

    private static double part(TextAnchor anchor) {
        return switch (anchor) {
            case START -> 0;
            case MIDDLE -> 0.5;
            case END -> 1;
        };
    }
}
