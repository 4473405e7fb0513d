package dev.quoin.toolpath;

/**
 * The stretches of a grid's lines that lie inside an area: those of line {@code first + i} are the pairs of {@code u} from
 * {@code starts[i]} to {@code starts[i + 1]}, rising, none empty, none touching the next.
 */
@SuppressWarnings("ArrayRecordComponent") // Never compared.
record Spans(Grid grid, int first, int[] starts, double[] u) {
    /** Spans that are nearer than this touch; what is shorter is none. mm. */
    static final double TOUCH = 1e-9;

    /** All spans of a hatch. */
    static Spans of(Hatch hatch) {
        int[] starts = new int[hatch.linesLeft() + 1];
        double[] u = new double[2 * hatch.mostSpans()];
        int lines = 0;
        while (hatch.next()) {
            for (int i = 0; i < hatch.size(); i++) {
                u[starts[lines] + i] = hatch.u(i);
            }
            starts[lines + 1] = starts[lines] + hatch.size();
            lines++;
        }
        return new Spans(hatch.grid(), hatch.line() + 1 - lines, starts, u);
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
}
