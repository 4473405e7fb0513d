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
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** {@code reprints/reprint-001.csv}: a line for each item that is marked again, and each part in which it is, in working order. */
final class ReprintCsv {
    private static final List<String> HEADER = Stream.concat(
                    Stream.of(
                            "item",
                            "plate",
                            "slot",
                            "x_mm",
                            "y_mm",
                            "rotation_deg",
                            "steps",
                            "marking_s",
                            "handling_s",
                            "part"),
                    StandColumns.NAMES.stream())
            .toList();

    private ReprintCsv() {}

    /** Writes it; the handling before each part stands with its first item. */
    static void write(Appendable out, ReprintedPlate plate, List<PlateTime> times) throws IOException {
        TableWriter table = new TableWriter(out);
        table.row(HEADER);
        String steps =
                plate.steps().stream().map(Step::number).map(String::valueOf).collect(Collectors.joining(" "));
        for (int part = 0; part < times.size(); part++) {
            writePart(table, plate, part, steps, times.get(part));
        }
    }

    private static void writePart(TableWriter table, ReprintedPlate plate, int index, String steps, PlateTime time)
            throws IOException {
        ReprintedPart part = plate.parts().get(index);
        Map<Integer, RunItem> rows = plate.rows().stream().collect(Collectors.toMap(RunItem::number, row -> row));
        for (int i = 0; i < part.items().size(); i++) {
            LoadedItem item = part.items().get(i);
            Placement placement = item.placement();
            List<String> row = new ArrayList<>(List.of(
                    Integer.toString(item.item()),
                    Integer.toString(rows.get(item.item()).plate()),
                    placement.slot().id(),
                    Decimals.mm(placement.centre().x()),
                    Decimals.mm(placement.centre().y()),
                    Decimals.mm(placement.rotation()),
                    steps,
                    Decimals.seconds(time.itemSeconds().get(i)),
                    Decimals.seconds(i == 0 ? time.handling() : 0),
                    Integer.toString(index + 1)));
            row.addAll(StandColumns.cells(part.stand()));
            table.row(row);
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
