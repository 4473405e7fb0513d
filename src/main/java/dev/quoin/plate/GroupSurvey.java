package dev.quoin.plate;

import dev.quoin.art.Artwork;
import dev.quoin.geometry.Path;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Step;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Gathers over all items of a group which of the jig's slots can hold every one of them. Items come and go; only the
 * extent of their ink is kept.
 */
public final class GroupSurvey {
    private static final int MOST_REMEMBERED = 1_000;

    private final Group group;
    private final List<Placement> placements;
    private final InkExtent extent;
    private final FinestDetail details;
    private final Map<Path, PocketFit> pockets;
    private final Map<Path, Set<Path>> known;
    private final Map<Path, Boolean> holdsAll;
    private int items;

    public GroupSurvey(Group group, FieldPose pose) {
        this.group = group;
        this.placements = pose.place(group.jig());
        this.extent = new InkExtent(placements);
        this.pockets = new LinkedHashMap<>();
        this.known = new LinkedHashMap<>();
        this.holdsAll = new LinkedHashMap<>();
        this.details = new FinestDetail(group.recipe());
        for (Placement placement : placements) {
            Path pocket = placement.slot().pocket();
            if (placement.slot().usable() && !pockets.containsKey(pocket)) {
                pockets.put(pocket, new PocketFit(pocket));
                known.put(pocket, Collections.newSetFromMap(new IdentityHashMap<>()));
                holdsAll.put(pocket, true);
            }
        }
    }

    private GroupSurvey(Group group, GroupSurvey same) {
        this.group = group;
        this.placements = same.placements;
        this.extent = same.extent;
        this.details = same.details;
        this.pockets = same.pockets;
        this.known = same.known;
        this.holdsAll = same.holdsAll;
        this.items = same.items;
    }

    /** What the same items come to through another lens; only once all of them are known. */
    public GroupSurvey through(Lens lens) {
        return new GroupSurvey(group.through(lens), this);
    }

    public Group group() {
        return group;
    }

    public int items() {
        return items;
    }

    /**
     * Takes an item of the group.
     *
     * @return whether its ink lies inside at least one usable pocket, if there is any; if not, the item is not counted
     */
    public boolean add(Artwork artwork) {
        List<Path> ink = artwork.ink(group.recipe());
        List<Path> holding =
                pockets.keySet().stream().filter(pocket -> holds(pocket, ink)).toList();
        if (holding.isEmpty() && !pockets.isEmpty()) {
            return false;
        }
        holdsAll.replaceAll((pocket, all) -> all && holding.contains(pocket));
        extent.add(ink);
        details.add(artwork);
        items++;
        return true;
    }

    /** The width of the thinnest part that a fill step covers, mm; empty if none is thinner than {@code enough}. */
    public OptionalDouble finestDetail(Step step, double enough) {
        return details.of(step, enough);
    }

    /** What each slot of the jig is good for, in the jig's order, now that all items are known. */
    public Map<Placement, SlotState> slots() {
        Map<Placement, SlotState> states = new LinkedHashMap<>();
        placements.forEach(placement -> states.put(placement, state(placement)));
        return states;
    }

    private SlotState state(Placement placement) {
        if (!placement.slot().usable()) {
            return SlotState.UNUSABLE;
        }
        if (!holdsAll.get(placement.slot().pocket())) {
            return SlotState.TOO_SMALL;
        }
        return group.lens().reach().contains(extent.at(placement), InkExtent.TOLERANCE)
                ? SlotState.OPEN
                : SlotState.OUT_OF_REACH;
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
