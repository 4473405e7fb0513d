package dev.quoin.verify;

import dev.quoin.plate.Band;
import dev.quoin.plate.FlipAxis;
import dev.quoin.plate.Stand;
import dev.quoin.table.Table;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** How the jig stands in the parts of a run, as {@code parts.csv} claims it. */
final class StandClaims {
    private StandClaims() {}

    static Map<PartKey, Stand> of(Table table) {
        Map<PartKey, Stand> stands = new HashMap<>();
        table.rows().forEach(row -> {
            RunRow part = new RunRow(table, row);
            stands.put(new PartKey(part.whole("plate"), part.whole("part")), stand(part));
        });
        return stands;
    }

    /** How the jig stands by a row of this table, or of a reprint's. */
    static Stand stand(RunRow row) {
        boolean round = !row.text("from_mm").isEmpty();
        return new Stand(
                FlipAxis.named(row.text("flip")),
                row.number("shift_x_mm"),
                row.number("shift_y_mm"),
                round
                        ? Optional.of(new Band(row.number("from_mm"), row.number("to_mm"), row.number("turn_deg")))
                        : Optional.empty());
    }
}
