package dev.quoin.toolpath;

/**
 * A stretch of a hatch that can be run through to and fro without jumping a gap: one span on each of successive lines.
 * Way 0 starts along its first line, way 1 against it.
 *
 * @param spans the hatch that it is part of
 * @param line the first line
 * @param at for each line, where its span stands in {@code spans.u()}
 */
@SuppressWarnings("ArrayRecordComponent") // Never compared.
record Region(Spans spans, int line, int[] at) implements Piece {
    @Override
    public int ways() {
        return 2;
    }

    @Override
    public double startX(int way) {
        return spans.grid().x(startU(way), line);
    }

    @Override
    public double startY(int way) {
        return spans.grid().y(startU(way), line);
    }

    @Override
    public double endX(int way) {
        return spans.grid().x(endU(way), line + at.length - 1);
    }

    @Override
    public double endY(int way) {
        return spans.grid().y(endU(way), line + at.length - 1);
    }

    @Override
    public void stroke(int way, boolean backwards, Strokes.Builder strokes) {
        strokes.reserve(at.length);
        for (int i = 0; i < at.length; i++) {
            int step = backwards ? at.length - 1 - i : i;
            spans.stroke(line + step, at[step], along(way, step) != backwards, strokes);
        }
    }

    private static boolean along(int way, int step) {
        return (step % 2 == 0) == (way == 0);
    }

    private double startU(int way) {
        return spans.u()[at[0] + (along(way, 0) ? 0 : 1)];
    }

    private double endU(int way) {
        int last = at.length - 1;
        return spans.u()[at[last] + (along(way, last) ? 1 : 0)];
    }
}
