package dev.quoin.job;

import dev.quoin.geometry.Decimals;
import dev.quoin.plate.Band;
import dev.quoin.plate.FlipAxis;
import dev.quoin.plate.Stand;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The columns by which tables say how a jig stands. */
final class StandColumns {
    static final List<String> NAMES = List.of("flip", "shift_x_mm", "shift_y_mm", "turn_deg", "from_mm", "to_mm");

    private StandColumns() {}

    static List<String> cells(Stand stand) {
        return List.of(
                stand.flip().map(FlipAxis::word).orElse(""),
                Decimals.mm(stand.dx()),
                Decimals.mm(stand.dy()),
                Decimals.mm(stand.turn()),
                stand.band().map(band -> Decimals.mm(band.from())).orElse(""),
                stand.band().map(band -> Decimals.mm(band.to())).orElse(""));
    }

    /** @param cell by the name of its column */
    static Stand stand(Function<String, String> cell) {
        Optional<Band> band = cell.apply("from_mm").isEmpty()
                ? Optional.empty()
                : Optional.of(new Band(number(cell, "from_mm"), number(cell, "to_mm"), number(cell, "turn_deg")));
        return new Stand(
                FlipAxis.named(cell.apply("flip")), number(cell, "shift_x_mm"), number(cell, "shift_y_mm"), band);
    }

    private static double number(Function<String, String> cell, String column) {
        return Double.parseDouble(cell.apply(column));
    }
}
