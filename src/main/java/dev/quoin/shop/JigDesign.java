package dev.quoin.shop;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.Point;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.util.ArrayList;
import java.util.List;

/**
 * A jig made from numbers: equal pockets in rows and columns in a rectangular plate; mm. Its centre is the plate's.
 *
 * @param rows counted from the top, named A, B, ... Z, AA, ...
 * @param columns counted from the left, from 1
 * @param pitchX from column to column
 * @param pitchY from row to row
 * @param pocket the shape to be cut, clearance included
 * @param margin from the outermost pockets to the plate's edge
 * @param pins holes for pins
 */
public record JigDesign(
        int rows, int columns, double pitchX, double pitchY, PocketShape pocket, double margin, List<Pin> pins) {
    private static final int MOST_SLOTS = 10_000;
    private static final Place PLACE = Place.of("jig");

    public JigDesign {
        pins = List.copyOf(pins);
    }

    /** Whether it can be made; what stands against it is a problem. */
    public boolean isSound(Problems problems) {
        int before = problems.errors();
        if (rows < 1 || columns < 1 || (long) rows * columns > MOST_SLOTS) {
            problems.error(
                    PLACE,
                    rows + " rows and " + columns + " columns cannot be made",
                    "give one or more of each, and at most " + MOST_SLOTS + " pockets in all");
        }
        checkPitch("columns", columns, "pitch-x", pitchX, pocket.width(), problems);
        checkPitch("rows", rows, "pitch-y", pitchY, pocket.height(), problems);
        if (problems.errors() == before) {
            pins.forEach(pin -> check(pin, problems));
        }
        return problems.errors() == before;
    }

    private static void checkPitch(
            String what, int count, String option, double pitch, double size, Problems problems) {
        if (count > 1 && pitch <= size) {
            problems.error(
                    PLACE,
                    "the " + what + " overlap: they stand " + text(pitch) + " mm apart, and a pocket takes "
                            + text(size) + " mm with its clearance",
                    "give a larger --" + option);
        }
    }

    private void check(Pin pin, Problems problems) {
        double radius = pin.diameter() / 2;
        String name = "the pin at " + text(pin.x()) + "," + text(pin.y());
        if (Math.abs(pin.x()) + radius >= width() / 2 || Math.abs(pin.y()) + radius >= height() / 2) {
            problems.error(
                    PLACE,
                    name + " stands out of the plate, which reaches from its centre to " + text(width() / 2) + ","
                            + text(height() / 2),
                    "move it, or give a larger --margin");
        }
        for (Slot slot : slots()) {
            double x = pin.x() - slot.centre().x();
            double y = pin.y() - slot.centre().y();
            if (pocket.distance(x, y) <= radius) {
                problems.error(PLACE, name + " meets pocket " + slot.id(), "move it");
            }
        }
    }

    /** The plate's width. */
    public double width() {
        return (columns - 1) * pitchX + pocket.width() + 2 * margin;
    }

    /** The plate's height. */
    public double height() {
        return (rows - 1) * pitchY + pocket.height() + 2 * margin;
    }

    /** The plate, around the jig's centre. */
    public Box plate() {
        return Box.centred(width(), height());
    }

    /** Its slots, row by row from the upper left. */
    public List<Slot> slots() {
        List<Slot> slots = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                Point centre = new Point((column - (columns - 1) / 2.0) * pitchX, ((rows - 1) / 2.0 - row) * pitchY);
                slots.add(new Slot(
                        letters(row) + (column + 1),
                        centre,
                        0,
                        pocket.width(),
                        pocket.height(),
                        pocket.outline(),
                        true));
            }
        }
        return slots;
    }

    private static String letters(int row) {
        String last = String.valueOf((char) ('A' + row % 26));
        return row < 26 ? last : letters(row / 26 - 1) + last;
    }

    private static String text(double mm) {
        return dev.quoin.geometry.Decimals.mm(mm);
    }
}
