package dev.quoin.job;

import dev.quoin.geometry.Decimals;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Machine;
import dev.quoin.table.Table;
import dev.quoin.table.TableReader;
import dev.quoin.table.TableRow;
import dev.quoin.table.TableWriter;
import dev.quoin.toolpath.Calibrated;
import dev.quoin.toolpath.Delay;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A machine table with other delays: the same rows and notes, other values; a row more where one was not set. */
final class MachineCsv {
    private static final double US = 1e6;

    private MachineCsv() {}

    /** The table with the delays that were fitted. */
    static String with(byte[] table, Calibrated calibrated, Machine was) throws IOException {
        return with(table, values(calibrated, was));
    }

    /** The table for a plate whose items are all marked on one piece, which is loaded once. */
    static String loadingOnce(byte[] table, Machine machine) throws IOException {
        return with(
                table,
                Map.of("load_s", "0", "plate_s", Decimals.text(machine.plate() + machine.load(), Decimals.COORDINATE)));
    }

    private static String with(byte[] table, Map<String, String> values) throws IOException {
        Table read = TableReader.read("machine.csv", table, Optional.empty(), new Problems())
                .orElseThrow(() -> new IOException("machine.csv cannot be read"));
        int setting = column(read, "setting");
        int value = column(read, "value");
        StringBuilder text = new StringBuilder();
        TableWriter out = new TableWriter(text);
        out.row(read.headers());
        Map<String, String> left = new TreeMap<>(values);
        for (TableRow row : read.rows()) {
            List<String> cells = new ArrayList<>(row.cells());
            String known = left.remove(cells.get(setting).strip());
            if (known != null) {
                cells.set(value, known);
            }
            out.row(cells);
        }
        for (Map.Entry<String, String> added : left.entrySet()) {
            List<String> cells =
                    new ArrayList<>(Collections.nCopies(read.headers().size(), ""));
            cells.set(setting, added.getKey());
            cells.set(value, added.getValue());
            out.row(cells);
        }
        return text.toString();
    }

    private static int column(Table table, String name) {
        return table.headers().stream().map(String::strip).toList().indexOf(name);
    }

    private static Map<String, String> values(Calibrated calibrated, Machine was) {
        Map<String, String> values = new HashMap<>();
        calibrated.delays().forEach((delay, seconds) -> {
            if (!calibrated.held().containsKey(delay)) {
                switch (delay) {
                    case STROKE -> values.putAll(stroke(seconds, was));
                    case JUMP_MM -> values.put(delay.setting(), Decimals.text(1 / seconds, 1));
                    case JUMP, CORNER -> values.put(delay.setting(), Decimals.text(seconds * US, 1));
                    case LOAD, PLATE, SHIFT -> values.put(delay.setting(), Decimals.text(seconds, 3));
                }
            }
        });
        return values;
    }

    /** Times show only the sum of the three, so they keep their proportion; where there is none, one takes it all. */
    private static Map<String, String> stroke(double seconds, Machine was) {
        double sum = Delay.STROKE.of(was);
        if (sum == 0) {
            return Map.of("mark_settle_us", Decimals.text(seconds * US, 1));
        }
        double ratio = seconds / sum * US;
        return Map.of(
                "laser_on_us", Decimals.text(was.laserOn() * ratio, 1),
                "mark_settle_us", Decimals.text(was.markSettle() * ratio, 1),
                "laser_off_us", Decimals.text(was.laserOff() * ratio, 1));
    }
}
