package dev.quoin.verify;

import dev.quoin.problem.Place;

/**
 * What {@code plates.csv} claims of a file of a plate.
 *
 * @param place where it says so
 * @param section of the run, from 1
 * @param items how many
 * @param marking the beam's work, s
 * @param handling s
 * @param total s
 */
public record PlateClaim(
        Place place,
        int section,
        int plate,
        String file,
        String jig,
        String lens,
        String recipe,
        int items,
        double marking,
        double handling,
        double total) {
    static PlateClaim of(RunRow row, int section) {
        return new PlateClaim(
                Place.of(row.table().file(), row.row().line()),
                section,
                row.whole("plate"),
                row.text("file"),
                row.text("jig"),
                row.text("lens"),
                row.text("recipe"),
                row.whole("items"),
                row.number("marking_s"),
                row.number("handling_s"),
                row.number("total_s"));
    }
}
