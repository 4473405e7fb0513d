package dev.quoin.toolpath;

import java.util.List;

/** Joins spans of several areas on the same grid, line by line. */
final class SpanUnion {
    private final List<Spans> all;
    private final int first;
    private final int[] starts;
    private final double[] u;
    private int size;

    /** @param all at least one, none without spans */
    SpanUnion(List<Spans> all) {
        this.all = all;
        this.first = all.stream().mapToInt(Spans::first).min().orElseThrow();
        int end = all.stream()
                .mapToInt(spans -> spans.first() + spans.lines())
                .max()
                .orElseThrow();
        this.starts = new int[end - first + 1];
        this.u = new double[2 * all.stream().mapToInt(Spans::count).sum()];
    }

    Spans of(Grid grid) {
        for (int i = 0; i + 1 < starts.length; i++) {
            starts[i] = size;
            for (Spans spans : all) {
                add(spans, first + i - spans.first());
            }
            join(starts[i]);
        }
        starts[starts.length - 1] = size;
        return new Spans(grid, first, starts, u);
    }

    private void add(Spans spans, int line) {
        if (line >= 0 && line < spans.lines()) {
            int from = spans.starts()[line];
            int count = spans.starts()[line + 1] - from;
            System.arraycopy(spans.u(), from, u, size, count);
            size += count;
        }
    }

    /** Sorts the spans from there on by their starts, and joins those that touch. */
    private void join(int from) {
        sort(from);
        int end = from;
        for (int i = from; i < size; i += 2) {
            if (end > from && u[i] - u[end - 1] <= Crossings.TOUCH) {
                u[end - 1] = Math.max(u[end - 1], u[i + 1]);
            } else {
                u[end] = u[i];
                u[end + 1] = u[i + 1];
                end += 2;
            }
        }
        size = end;
    }

    /** By insertion: the spans of each area are sorted already, and areas seldom overlap. */
    private void sort(int from) {
        for (int i = from + 2; i < size; i += 2) {
            double start = u[i];
            double end = u[i + 1];
            int j = i - 2;
            while (j >= from && u[j] > start) {
                u[j + 2] = u[j];
                u[j + 3] = u[j + 1];
                j -= 2;
            }
            u[j + 2] = start;
            u[j + 3] = end;
        }
    }
}
