package dev.quoin.verify;

import dev.quoin.geometry.Point;
import dev.quoin.problem.Place;

/**
 * What {@code items.csv} claims of an item in a part of its plate.
 *
 * @param place where it says so
 * @param centre in the field, mm
 * @param rotation in the field, degrees anticlockwise
 * @param seconds its time
 */
public record ItemClaim(
        Place place,
        int item,
        int line,
        int copy,
        int plate,
        int part,
        String slot,
        Point centre,
        double rotation,
        double seconds) {
    PartKey key() {
        return new PartKey(plate, part);
    }

    static ItemClaim of(RunRow row) {
        return new ItemClaim(
                Place.of(row.table().file(), row.row().line()),
                row.whole("item"),
                row.whole("row"),
                row.whole("copy"),
                row.whole("plate"),
                row.whole("part"),
                row.text("slot"),
                new Point(row.number("x_mm"), row.number("y_mm")),
                row.number("rotation_deg"),
                row.number("seconds"));
    }
}
