package dev.quoin.job;

import dev.quoin.geometry.Decimals;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Placement;
import dev.quoin.plate.PlateTime;
import dev.quoin.shop.Step;
import dev.quoin.table.Table;
import dev.quoin.table.TableRow;
import dev.quoin.table.TableWriter;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;

/** {@code reprints/reprint-001.csv}: a line for each item that is marked again, in working order. */
final class ReprintCsv {
    private static final List<String> HEADER =
            List.of("item", "plate", "slot", "x_mm", "y_mm", "rotation_deg", "steps", "marking_s", "handling_s");

    private ReprintCsv() {}

    /** Writes it; the handling of the whole loading stands with the first item. */
    static void write(Appendable out, ReprintedPlate plate, PlateTime time) throws IOException {
        TableWriter table = new TableWriter(out);
        table.row(HEADER);
        String steps =
                plate.steps().stream().map(Step::number).map(String::valueOf).collect(Collectors.joining(" "));
        for (int i = 0; i < plate.items().size(); i++) {
            LoadedItem item = plate.items().get(i);
            Placement placement = item.placement();
            table.row(List.of(
                    Integer.toString(item.item()),
                    Integer.toString(plate.rows().get(i).plate()),
                    placement.slot().id(),
                    Decimals.mm(placement.centre().x()),
                    Decimals.mm(placement.centre().y()),
                    Decimals.mm(placement.rotation()),
                    steps,
                    Decimals.seconds(time.itemSeconds().get(i)),
                    Decimals.seconds(i == 0 ? time.handling() : 0)));
        }
    }

    /** A cell of a row that was read back. */
    static String cell(TableRow row, String column) {
        return row.cells().get(HEADER.indexOf(column));
    }

    /** Marking and handling of the whole reprint, s. */
    static double seconds(Table table) {
        return table.rows().stream()
                .mapToDouble(
                        row -> Double.parseDouble(cell(row, "marking_s")) + Double.parseDouble(cell(row, "handling_s")))
                .sum();
    }
}
