package dev.quoin.plate;

import dev.quoin.art.MarkedCode;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import dev.quoin.plate.Extents.Stretch;
import dev.quoin.shop.Cylinder;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Machine;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/** Gathers where there is ink around and along the round pieces of a group, over all of them, so that all turn alike. */
final class RoundSurvey {
    private static final double FLATNESS = 0.02;
    private static final int MOST_REMEMBERED = 1_000;

    private final Cylinder piece;
    private final Machine machine;
    private final double overlap;
    private final Extents around = new Extents();
    private final Set<Path> measured = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<Stretch> codes = new HashSet<>();
    private Box box = Box.EMPTY;

    RoundSurvey(Cylinder piece, Machine machine, double overlap) {
        this.piece = piece;
        this.machine = machine;
        this.overlap = overlap;
    }

    void take(List<Path> ink, List<MarkedCode> found) {
        found.forEach(code ->
                codes.add(new Stretch(code.bounds().minX(), code.bounds().maxX())));
        for (Path path : ink) {
            if (measured.contains(path)) {
                continue;
            }
            if (measured.size() < MOST_REMEMBERED) {
                measured.add(path);
            }
            box = box.union(path.bounds());
            for (Polyline line : path.flatten(FLATNESS)) {
                double from = Double.POSITIVE_INFINITY;
                double to = Double.NEGATIVE_INFINITY;
                for (int i = 0; i < line.size(); i++) {
                    from = Math.min(from, line.x(i));
                    to = Math.max(to, line.x(i));
                }
                around.add(from - FLATNESS, to + FLATNESS);
            }
        }
    }

    /** Whether the lens reaches all ink along the piece while it lies at a placement. */
    boolean isReached(Placement placement, Lens lens) {
        double half = bands(lens).stream()
                .mapToDouble(band -> new Wrap(piece, band).halfWidth())
                .max()
                .orElse(0);
        Box seen = new Box(-half, box.minY(), half, box.maxY());
        return lens.reach().contains(placement.pose().apply(seen), InkExtent.TOLERANCE);
    }

    /** The strips in which a piece is marked through a lens, in the order in which it is turned. */
    List<Band> bands(Lens lens) {
        return strips(lens).stream()
                .map(strip -> new Band(
                        strip.from(), strip.to(), Math.toDegrees((strip.from() + strip.to()) / 2 / piece.radius())))
                .toList();
    }

    /** How many seams run through ink. */
    int cuts(Lens lens) {
        return (int) strips(lens).stream().filter(Seams.Strip::cut).count();
    }

    /** How many codes no strip holds whole; those in one place count once. */
    int codesCut(Lens lens) {
        List<Band> bands = bands(lens);
        return (int) codes.stream()
                .filter(code -> bands.stream().noneMatch(band -> band.from() <= code.from() && code.to() <= band.to()))
                .count();
    }

    private List<Seams.Strip> strips(Lens lens) {
        double widest = BandLimit.widest(piece, lens, machine);
        return new ArrayList<>(Seams.of(around.all(), widest, Math.min(overlap, widest / 4)));
    }
}
