package dev.quoin.job;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Decimals;
import dev.quoin.geometry.Point;
import dev.quoin.plate.FieldPose;
import dev.quoin.plate.RigidFit;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Suggestion;
import dev.quoin.shop.Jig;
import dev.quoin.shop.JigShift;
import dev.quoin.shop.Machine;
import dev.quoin.shop.Slot;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Where the centres of some slots were measured.
 *
 * @param place where the user says so
 * @param measured by slot, in the directions of the machine's body, mm from the field's centre; at least two
 */
record Datum(Place place, Map<String, Point> measured) {
    /** Points that miss by more cannot be of this jig, or were not measured well; root mean square, mm. */
    static final double LIMIT = 0.3;
    /** A jig that lies further round has been laid so on purpose, or its points are swapped; degrees. */
    static final double MOST_TURN = 10;

    private static final String REMEDY = "write slots with x and y in mm, such as A1=-42.1,30.02; D5=41.8,-29.7";

    /** The measured points of the settings, if they give any; what is not understood is a problem. */
    static Optional<Datum> of(JobSettings settings, Machine machine, Problems problems) {
        Optional<String> text = settings.text(JobKey.DATUM);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Place place = settings.place(JobKey.DATUM);
        Affine toBody = FieldPose.bodyToField(machine).inverse();
        Map<String, Point> points = new LinkedHashMap<>();
        for (String one : text.get().split(";")) {
            int equals = one.lastIndexOf('=');
            Optional<List<Double>> xy = Numbers.read(one.substring(equals + 1), 2);
            String slot = one.substring(0, Math.max(0, equals)).strip();
            if (slot.isEmpty() || xy.isEmpty()) {
                problems.error(place, "datum: '" + one.strip() + "' is no measured slot", REMEDY);
                return Optional.empty();
            }
            Point field = new Point(xy.get().get(0), xy.get().get(1));
            if (points.put(slot, toBody.apply(field)) != null) {
                problems.error(place, "datum: slot '" + slot + "' is given twice", "give each slot once");
                return Optional.empty();
            }
        }
        if (points.size() < 2) {
            problems.error(place, "datum: one point does not show how the jig is turned", "measure two or more slots");
            return Optional.empty();
        }
        return Optional.of(new Datum(place, points));
    }

    /** How a jig lies by these points; nothing, and a problem, if they do not fit it. */
    Optional<JigShift> fit(Jig jig, Problems problems) {
        Map<String, Slot> slots = jig.slots().stream().collect(Collectors.toMap(Slot::id, slot -> slot));
        List<Point> should = new ArrayList<>();
        for (String name : measured.keySet()) {
            Slot slot = slots.get(name);
            if (slot == null) {
                problems.error(
                        place,
                        "datum: the jig " + jig.name() + " has no slot '" + name + "'",
                        Suggestion.remedy(
                                name, jig.slots().stream().map(Slot::id).toList()));
                return Optional.empty();
            }
            should.add(new Point(
                    slot.centre().x() - jig.centre().x(),
                    slot.centre().y() - jig.centre().y()));
        }
        RigidFit fit = RigidFit.of(should, List.copyOf(measured.values()));
        return accepted(fit, jig, problems) ? Optional.of(fit.shift()) : Optional.empty();
    }

    private boolean accepted(RigidFit fit, Jig jig, Problems problems) {
        String rms = Decimals.text(fit.rms(), 3) + " mm";
        String limit = Decimals.text(LIMIT, 1) + " mm are granted";
        if (fit.rms() > LIMIT && fit.mirroredRms() <= LIMIT) {
            problems.error(
                    place,
                    "datum: the measured points are a mirror image of the jig " + jig.name(),
                    "check the signs, and field_mirror in machine.csv, which 'quoin jig --arrow' finds out");
            return false;
        }
        if (fit.rms() > LIMIT) {
            problems.error(
                    place,
                    "datum: the measured points miss those of the jig " + jig.name() + " by " + rms
                            + " (root mean square; " + limit + ")",
                    "measure again, and check that each slot is the one meant");
            return false;
        }
        if (Math.abs(fit.shift().angle()) > MOST_TURN) {
            problems.error(
                    place,
                    "datum: by the measured points the jig " + jig.name() + " lies turned by "
                            + Decimals.text(fit.shift().angle(), 1) + " degrees ("
                            + Decimals.text(MOST_TURN, 0) + " are granted)",
                    "check that slots are not swapped, or give such a turn by --jig-shift");
            return false;
        }
        problems.note(
                place,
                "datum: the points fit the jig " + jig.name() + " to " + rms + " (root mean square; " + limit + "); "
                        + JigStand.words(fit.shift()),
                measured.size() > 2 ? "" : "two points show no swapped sign or slot; a third would");
        return true;
    }
}
