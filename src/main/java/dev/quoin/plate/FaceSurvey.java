package dev.quoin.plate;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Gathers over all items of a group how far the ink of one side reaches, and which pockets hold all of it. */
final class FaceSurvey {
    private static final int MOST_REMEMBERED = 1_000;

    private final InkExtent extent;
    private final Map<Path, PocketFit> pockets = new LinkedHashMap<>();
    private final Map<Path, Set<Path>> known = new LinkedHashMap<>();
    private final Map<Path, Boolean> holdsAll = new LinkedHashMap<>();

    /** @param placements of the jig's slots with this side up */
    FaceSurvey(List<Placement> placements) {
        extent = new InkExtent(placements);
        for (Placement placement : placements) {
            Path pocket = placement.slot().pocket();
            if (placement.slot().usable() && !pockets.containsKey(pocket)) {
                pockets.put(pocket, PocketFit.of(pocket));
                known.put(pocket, Collections.newSetFromMap(new IdentityHashMap<>()));
                holdsAll.put(pocket, true);
            }
        }
    }

    /** Whether no slot is usable, so that nothing can be said of pockets. */
    boolean isEmpty() {
        return pockets.isEmpty();
    }

    /** The usable pockets inside which an item's ink lies. */
    List<Path> holding(List<Path> ink) {
        return pockets.keySet().stream().filter(pocket -> holds(pocket, ink)).toList();
    }

    /** By how much ink that no pocket holds stands out of the one that it stands out of least; nothing if only of its shape. */
    Optional<Overhang> overhang(List<Path> ink) {
        Box box = ink.stream().map(Path::bounds).reduce(Box.EMPTY, Box::union);
        List<Optional<Overhang>> overhangs = pockets.keySet().stream()
                .map(pocket -> Overhang.of(box, pocket.bounds()))
                .toList();
        return overhangs.contains(Optional.<Overhang>empty())
                ? Optional.empty()
                : overhangs.stream().flatMap(Optional::stream).min(Comparator.comparingDouble(Overhang::mm));
    }

    /** Takes the ink of an item, and the pockets that hold it. */
    void take(List<Path> ink, List<Path> holding) {
        holdsAll.replaceAll((pocket, all) -> all && holding.contains(pocket));
        extent.add(ink);
    }

    /** Whether a usable slot's pocket holds the ink of every item. */
    boolean fits(Placement placement) {
        return holdsAll.get(placement.slot().pocket());
    }

    /** The box around all ink, if it lay at this placement; field coordinates, mm. */
    Box at(Placement placement) {
        return extent.at(placement);
    }

    private boolean holds(Path pocket, List<Path> ink) {
        Set<Path> proven = known.get(pocket);
        for (Path path : ink) {
            if (proven.contains(path)) {
                continue;
            }
            if (!pockets.get(pocket).holds(path)) {
                return false;
            }
            if (proven.size() < MOST_REMEMBERED) {
                proven.add(path);
            }
        }
        return true;
    }
}
