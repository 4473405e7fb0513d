package dev.quoin.toolpath;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Cuts a hatch into regions: a span carries on the region of a span on the line before if these two overlap each other and
 * no other span on those lines. So an area divides where it forks, joins, or passes a hole (boustrophedon cellular
 * decomposition: H. Choset, P. Pignon, "Coverage path planning", Field and Service Robotics, 1998; from memory).
 */
final class Regions {
    private static final int NONE = -1;
    private static final int SEVERAL = -2;

    private final Spans spans;
    /** For each span, the one that it overlaps on the next line, and on the line before. */
    private final int[] next;

    private final int[] previous;

    private Regions(Spans spans) {
        this.spans = spans;
        this.next = new int[spans.count()];
        this.previous = new int[spans.count()];
        Arrays.fill(next, NONE);
        Arrays.fill(previous, NONE);
    }

    /** The regions in the order in which their first lines come. */
    static List<Piece> of(Spans spans) {
        Regions regions = new Regions(spans);
        for (int i = 0; i + 1 < spans.lines(); i++) {
            regions.link(i);
        }
        return regions.collect();
    }

    private void link(int line) {
        double[] u = spans.u();
        int a = spans.starts()[line];
        int b = spans.starts()[line + 1];
        int endA = b;
        int endB = spans.starts()[line + 2];
        while (a < endA && b < endB) {
            if (u[a] < u[b + 1] && u[b] < u[a + 1]) {
                next[a / 2] = next[a / 2] == NONE ? b / 2 : SEVERAL;
                previous[b / 2] = previous[b / 2] == NONE ? a / 2 : SEVERAL;
            }
            if (u[a + 1] < u[b + 1]) {
                a += 2;
            } else {
                b += 2;
            }
        }
    }

    private List<Piece> collect() {
        List<Piece> found = new ArrayList<>();
        for (int i = 0; i < spans.lines(); i++) {
            for (int at = spans.starts()[i]; at < spans.starts()[i + 1]; at += 2) {
                int before = previous[at / 2];
                if (before < 0 || next[before] < 0) {
                    found.add(new Region(spans, spans.first() + i, chain(at / 2)));
                }
            }
        }
        return found;
    }

    /** The spans that carry on from one; as places in {@code spans.u()}. */
    private int[] chain(int from) {
        int length = 1;
        for (int span = from; continues(span); span = next[span]) {
            length++;
        }
        int[] at = new int[length];
        int span = from;
        for (int i = 0; i < length; i++) {
            at[i] = 2 * span;
            span = next[span];
        }
        return at;
    }

    private boolean continues(int span) {
        return next[span] >= 0 && previous[next[span]] >= 0;
    }
}
