package dev.quoin.plate;

import dev.quoin.art.Artwork;
import dev.quoin.geometry.Path;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Machine;
import dev.quoin.shop.Step;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Gathers over all items of a group which of the jig's slots can hold every one of them, on each side that is marked, and
 * from which stands of the jig each is reached. Items come and go; only the extent of their ink is kept.
 */
public final class GroupSurvey {
    private final Group group;
    private final List<Placement> placements;
    private final List<Face> faces;
    private final FinestDetail details;
    private final Optional<RoundSurvey> round;
    private final Machine machine;
    private int items;

    /**
     * A side, as the jig can stand with it up.
     *
     * @param placements of all slots in the jig's order, for each of the stands
     */
    private record Face(List<Stand> stands, List<List<Placement>> placements, FaceSurvey survey) {
        static Face of(Group group, List<Stand> stands, Machine machine) {
            List<List<Placement>> placements = stands.stream()
                    .map(stand -> FieldPose.place(group.jig(), stand, machine))
                    .toList();
            return new Face(stands, placements, new FaceSurvey(placements.get(0)));
        }
    }

    public GroupSurvey(Group group, Stands stands, Machine machine) {
        this.group = group;
        this.placements = FieldPose.place(group.jig(), Stand.LOADED, machine);
        this.faces = stands.faces().stream()
                .map(face -> Face.of(group, face, machine))
                .toList();
        this.details = new FinestDetail(group.recipe());
        this.round = group.jig().round().map(piece -> new RoundSurvey(piece, machine, stands.overlap()));
        this.machine = machine;
    }

    private GroupSurvey(Group group, GroupSurvey same) {
        this.group = group;
        this.placements = same.placements;
        this.faces = same.faces;
        this.details = same.details;
        this.round = same.round;
        this.machine = same.machine;
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
     * @param sides what is marked on its front and, if the back is marked too, on its back
     * @return the side whose ink lies inside no usable pocket, though there is one; then the item is not counted
     */
    public Optional<StandsOut> add(List<Artwork> sides) {
        List<List<Path>> holding = new ArrayList<>();
        for (int side = 0; side < faces.size(); side++) {
            FaceSurvey survey = faces.get(side).survey();
            List<Path> ink = sides.get(side).ink(group.recipe());
            holding.add(survey.holding(ink));
            if (holding.get(side).isEmpty() && !survey.isEmpty()) {
                return Optional.of(new StandsOut(side, survey.overhang(ink)));
            }
        }
        for (int side = 0; side < faces.size(); side++) {
            faces.get(side).survey().take(sides.get(side).ink(group.recipe()), holding.get(side));
            details.add(sides.get(side));
            List<Path> ink = sides.get(side).ink(group.recipe());
            Artwork artwork = sides.get(side);
            round.ifPresent(piece -> piece.take(ink, artwork.codes()));
        }
        items++;
        return Optional.empty();
    }

    /** The width of the thinnest part that a fill step covers, mm; empty if none is thinner than {@code enough}. */
    public OptionalDouble finestDetail(Step step, double enough) {
        return details.of(step, enough);
    }

    /** What each slot of the jig, as it is loaded, is good for, in the jig's order, now that all items are known. */
    public Map<Placement, SlotState> slots() {
        Map<Placement, SlotState> states = new LinkedHashMap<>();
        for (int i = 0; i < placements.size(); i++) {
            states.put(placements.get(i), state(i));
        }
        return states;
    }

    /** The strips in which round pieces are marked; empty for flat ones. */
    public Optional<RoundPlan> roundPlan() {
        return round.map(piece -> new RoundPlan(
                group, piece.bands(group.lens()), piece.cuts(group.lens()), piece.codesCut(group.lens()), machine));
    }

    /** For each side, from which stands each slot is reached. */
    public List<Stations> stations() {
        List<Stations> sides = new ArrayList<>();
        for (Face face : faces) {
            Map<String, BitSet> reached = new LinkedHashMap<>();
            for (int i = 0; i < placements.size(); i++) {
                reached.put(placements.get(i).slot().id(), reached(face, i));
            }
            sides.add(new Stations(face.stands(), face.placements(), reached));
        }
        return sides;
    }

    private SlotState state(int slot) {
        if (!placements.get(slot).slot().usable()) {
            return SlotState.UNUSABLE;
        }
        for (Face face : faces) {
            if (!face.survey().fits(face.placements().get(0).get(slot))) {
                return SlotState.TOO_SMALL;
            }
        }
        if (round.isPresent()) {
            return round.get().isReached(placements.get(slot), group.lens()) ? SlotState.OPEN : SlotState.OUT_OF_REACH;
        }
        return faces.stream().noneMatch(face -> reached(face, slot).isEmpty())
                ? SlotState.OPEN
                : SlotState.OUT_OF_REACH;
    }

    private BitSet reached(Face face, int slot) {
        BitSet stands = new BitSet();
        for (int i = 0; i < face.stands().size(); i++) {
            Placement there = face.placements().get(i).get(slot);
            stands.set(i, group.lens().reach().contains(face.survey().at(there), InkExtent.TOLERANCE));
        }
        return stands;
    }
}
