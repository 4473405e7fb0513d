package dev.quoin.toolpath;

import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Polyline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Closed chains that meet nowhere, sorted by what they bound: most artwork is so, and then its true edge need not be
 * worked out, only which of its chains are a part of that edge. A chain is, if what lies on one side of it is covered and
 * what lies on the other is not.
 */
final class Rings {
    private final List<Cover> covers;
    private final List<Polyline> chains = new ArrayList<>();
    /** For each chain, its place among the covers. */
    private final List<Integer> owners = new ArrayList<>();

    /**
     * One part of an area.
     *
     * @param shell its outer edge
     * @param holes the edges of what is not covered in it
     */
    record Part(Polyline shell, List<Polyline> holes) {}

    private Rings(List<Cover> covers) {
        this.covers = covers;
        for (int c = 0; c < covers.size(); c++) {
            for (Polyline chain : covers.get(c).outline()) {
                if (chain.size() >= 3) {
                    chains.add(chain);
                    owners.add(c);
                }
            }
        }
    }

    /** The parts of the area that the covers cover together, or nothing where their chains meet. */
    static Optional<List<Part>> parts(List<Cover> covers) {
        Rings rings = new Rings(covers);
        return Meetings.any(rings.chains) ? Optional.empty() : Optional.of(rings.parts());
    }

    private List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        List<Polyline> holes = new ArrayList<>();
        for (int i = 0; i < chains.size(); i++) {
            boolean inside = isCovered(i, chains.get(i).signedArea() > 0 ? 1 : -1);
            boolean outside = isCovered(i, 0);
            if (inside && !outside) {
                parts.add(new Part(chains.get(i), new ArrayList<>()));
            } else if (outside && !inside) {
                holes.add(chains.get(i));
            }
        }
        holes.forEach(hole ->
                around(hole, parts).ifPresent(part -> parts.get(part).holes().add(hole)));
        return parts;
    }

    /** Whether a place next to a chain is covered, around which the chain itself runs so many times. */
    private boolean isCovered(int chain, int own) {
        double x = chains.get(chain).x(0);
        double y = chains.get(chain).y(0);
        int[] windings = new int[covers.size()];
        for (int i = 0; i < chains.size(); i++) {
            windings[owners.get(i)] += i == chain ? own : Winding.number(chains.get(i), x, y);
        }
        for (int c = 0; c < windings.length; c++) {
            if (covers.get(c).rule() == FillRule.EVEN_ODD ? windings[c] % 2 != 0 : windings[c] != 0) {
                return true;
            }
        }
        return false;
    }

    /** The smallest part around a hole. */
    private static OptionalInt around(Polyline hole, List<Part> parts) {
        int found = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < parts.size(); i++) {
            Polyline shell = parts.get(i).shell();
            double area = Math.abs(shell.signedArea());
            if (area < least && Winding.number(shell, hole.x(0), hole.y(0)) != 0) {
                least = area;
                found = i;
            }
        }
        return found < 0 ? OptionalInt.empty() : OptionalInt.of(found);
    }
}
