package dev.quoin.plate;

import dev.quoin.plate.Extents.Stretch;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Cuts inked stretches into strips no wider than a limit: so that as few seams as can be run through ink, then into as few
 * strips as can be. Dynamic programming from the left: a strip ends with any stretch that it holds whole, or, full, inside
 * one; then the next one begins a little before, so that the two overlap.
 */
final class Seams {
    /** A strip; {@code cut} tells that it ends inside ink. */
    record Strip(double from, double to, boolean cut) {}

    /** The strips from some point on: the fewest cuts, then the fewest strips. */
    private record Best(int cuts, List<Strip> strips) {
        boolean isBetter(Best other) {
            return cuts < other.cuts || cuts == other.cuts && strips.size() < other.strips.size();
        }

        Best after(Strip first) {
            List<Strip> all = new ArrayList<>();
            all.add(first);
            all.addAll(strips);
            return new Best(cuts + (first.cut() ? 1 : 0), all);
        }
    }

    private final List<Stretch> stretches;
    private final double widest;
    private final double overlap;
    private final Map<Double, Best> known = new HashMap<>();

    private Seams(List<Stretch> stretches, double widest, double overlap) {
        this.stretches = stretches;
        this.widest = widest;
        this.overlap = overlap;
    }

    /**
     * The strips, from left to right.
     *
     * @param stretches ascending, apart
     * @param widest more than twice the overlap
     */
    static List<Strip> of(List<Stretch> stretches, double widest, double overlap) {
        if (!(widest > 2 * overlap)) {
            throw new IllegalArgumentException("strips of " + widest + " mm that overlap by " + overlap);
        }
        return stretches.isEmpty()
                ? List.of()
                : new Seams(stretches, widest, overlap)
                        .best(0, stretches.get(0).from())
                        .strips();
    }

    /** What is left from a point in a stretch on. */
    private Best best(int index, double from) {
        Best found = known.get(from);
        if (found != null) {
            return found;
        }
        double end = from + widest;
        for (int last = index; last < stretches.size() && stretches.get(last).from() < end; last++) {
            double to = stretches.get(last).to();
            boolean whole = to <= end;
            Best rest = whole ? after(last) : best(last, end - overlap);
            Best all = rest.after(new Strip(from, whole ? to : end, !whole));
            if (found == null || all.isBetter(found)) {
                found = all;
            }
        }
        known.put(from, found);
        return found;
    }

    private Best after(int last) {
        return last + 1 == stretches.size()
                ? new Best(0, List.of())
                : best(last + 1, stretches.get(last + 1).from());
    }
}
