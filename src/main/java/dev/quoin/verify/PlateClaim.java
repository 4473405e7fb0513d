package dev.quoin.verify;

import dev.quoin.plate.Stand;
import dev.quoin.problem.Place;
import java.util.Map;

/**
 * What {@code plates.csv} claims of a file of a plate.
 *
 * @param place where it says so
 * @param section of the run, from 1
 * @param stand how the jig stands in the part, as {@code parts.csv} has it
 * @param items how many
 * @param marking the beam's work, s
 * @param handling s
 * @param total s
 */
public record PlateClaim(
        Place place,
        int section,
        int plate,
        int part,
        Stand stand,
        String file,
        String jig,
        String lens,
        String recipe,
        int items,
        double marking,
        double handling,
        double total) {
    static PlateClaim of(RunRow row, int section, Map<PartKey, Stand> stands) {
        return new PlateClaim(
                Place.of(row.table().file(), row.row().line()),
                section,
                row.whole("plate"),
                row.whole("part"),
                stands.getOrDefault(new PartKey(row.whole("plate"), row.whole("part")), Stand.LOADED),
                row.text("file"),
                row.text("jig"),
                row.text("lens"),
                row.text("recipe"),
                row.whole("items"),
                row.number("marking_s"),
                row.number("handling_s"),
                row.number("total_s"));
    }

    /** The same plate while its jig stands in another way. */
    PlateClaim standing(Stand other) {
        return new PlateClaim(
                place, section, plate, part, other, file, jig, lens, recipe, items, marking, handling, total);
    }

    PartKey key() {
        return new PartKey(plate, part);
    }
}
