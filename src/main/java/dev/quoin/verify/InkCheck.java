package dev.quoin.verify;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import dev.quoin.plate.Placement;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** The marks of one plate file, as they are read: each in an item's group, in its pocket, in the lens's reach. */
final class InkCheck implements PlateGroups {
    /** Rounding of the plate file, and what the reach itself grants, mm. */
    private static final double REACH_TOLERANCE = 0.002;

    private static final String REMEDY = "do not mark this plate; prepare the run again";

    private final String file;
    private final Fixture fixture;
    private final Map<String, Pocket> pockets;
    /** The slot of each item that may be in the file. */
    private final Map<Integer, String> slots;

    private final Problems problems;
    private final Set<String> seen = new HashSet<>();
    private final Set<Integer> items = new HashSet<>();
    private final Set<Integer> complained = new HashSet<>();
    private final Map<String, Affine> toPocket = new HashMap<>();
    private Affine toField = Affine.IDENTITY;
    private int current;
    private long marks;

    InkCheck(String file, Fixture fixture, Map<String, Pocket> pockets, Map<Integer, String> slots, Problems problems) {
        this.file = file;
        this.fixture = fixture;
        this.pockets = pockets;
        this.slots = slots;
        this.problems = problems;
    }

    /** The groups that were in it: {@code step item}. */
    Set<String> seen() {
        return seen;
    }

    /** How many items it marks. */
    int items() {
        return items.size();
    }

    long marks() {
        return marks;
    }

    static String group(int step, int item) {
        return step + " " + item;
    }

    @Override
    public void page(double width, double height) {
        if (width != fixture.lens().field() || height != fixture.lens().field()) {
            complain(
                    0,
                    "its page is " + width + " x " + height + " mm, the lens's field "
                            + fixture.lens().field() + " mm");
        }
        toField = new Affine(1, 0, 0, -1, -width / 2, height / 2);
        fixture.placements().forEach((slot, placement) -> toPocket.put(slot, toPocket(placement)));
    }

    private Affine toPocket(Placement placement) {
        return toField.then(placement.pose().inverse());
    }

    @Override
    public void item(int step, int number) {
        current = number;
        items.add(number);
        if (!slots.containsKey(number)) {
            complain(number, "it marks item " + number + ", which items.csv has on another plate or not at all");
        } else if (!seen.add(group(step, number))) {
            complain(number, "it marks item " + number + " twice in step " + step);
        }
    }

    @Override
    public void path(Path path) {
        marks++;
        String slot = slots.getOrDefault(current, "");
        if (complained.contains(current) || !toPocket.containsKey(slot)) {
            return;
        }
        Path inPocket = path.transform(toPocket.get(slot));
        Box inField = toField.apply(path.bounds());
        if (!pockets.get(slot).holds(inPocket)) {
            complain(current, "a mark of item " + current + " lies outside the pocket of slot " + slot);
        } else if (!fixture.lens().reach().contains(inField, REACH_TOLERANCE)) {
            complain(
                    current,
                    "a mark of item " + current + " lies outside the reach of the lens "
                            + fixture.lens().name());
        }
    }

    /** An item is complained of once. */
    private void complain(int number, String what) {
        if (complained.add(number)) {
            problems.error(Place.of(file), what, REMEDY);
        }
    }
}
