package dev.quoin.toolpath;

import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Polyline;
import java.util.List;

/**
 * The stretches of a grid's lines that lie inside an area: those of line {@code first + i} are the pairs of {@code u} from
 * {@code starts[i]} to {@code starts[i + 1]}, rising, none empty, none touching the next.
 */
@SuppressWarnings("ArrayRecordComponent") // Never compared.
record Spans(Grid grid, int first, int[] starts, double[] u) {
    /** The spans of the area that closed chains surround. */
    static Spans of(List<Polyline> outline, FillRule rule, Grid grid) {
        Crossings crossings = new Crossings();
        for (Polyline chain : outline) {
            addEdges(chain, grid, crossings);
        }
        return crossings.spans(grid, rule);
    }

    /** What lies in one of them at least. */
    static Spans union(List<Spans> all, Grid grid) {
        List<Spans> some = all.stream().filter(spans -> spans.count() > 0).toList();
        if (some.isEmpty()) {
            return all.get(0);
        }
        return some.size() == 1 ? some.get(0) : new SpanUnion(some).of(grid);
    }

    int lines() {
        return starts.length - 1;
    }

    /** The number of spans. */
    int count() {
        return starts[lines()] / 2;
    }

    /** Adds a line's span to strokes, along the line or against it. */
    void stroke(int line, int at, boolean along, Strokes.Builder strokes) {
        double from = along ? u[at] : u[at + 1];
        double to = along ? u[at + 1] : u[at];
        strokes.point(grid.x(from, line), grid.y(from, line));
        strokes.point(grid.x(to, line), grid.y(to, line)).end();
    }

    private static void addEdges(Polyline chain, Grid grid, Crossings crossings) {
        int last = chain.size() - 1;
        crossings.from(grid.u(chain.x(last), chain.y(last)), grid.line(chain.x(last), chain.y(last)));
        for (int i = 0; i <= last; i++) {
            crossings.add(grid.u(chain.x(i), chain.y(i)), grid.line(chain.x(i), chain.y(i)));
        }
    }
}
