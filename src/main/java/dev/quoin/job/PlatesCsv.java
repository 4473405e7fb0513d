package dev.quoin.job;

import dev.quoin.geometry.Decimals;
import dev.quoin.plate.Group;
import dev.quoin.plate.Part;
import dev.quoin.plate.Plate;
import dev.quoin.plate.PlateTime;
import dev.quoin.plate.StepTime;
import dev.quoin.shop.Blank;
import dev.quoin.table.TableWriter;
import dev.quoin.toolpath.Tally;
import java.io.IOException;
import java.util.List;

/** {@code plates.csv}: a line for each file of each part of each plate; held as text, since plates may be many. */
final class PlatesCsv {
    private static final List<String> HEADER = List.of(
            "plate",
            "part",
            "file",
            "jig",
            "lens",
            "recipe",
            "blank",
            "items",
            "mark_mm",
            "jump_mm",
            "strokes",
            "marking_s",
            "handling_s",
            "total_s");

    private final StringBuilder text = new StringBuilder();
    private final TableWriter table = new TableWriter(text);

    PlatesCsv() throws IOException {
        table.row(HEADER);
    }

    /** Takes a part with one file, or one for each step; handling counts with the first. */
    void take(Plate plate, Part part, List<String> files, PlateTime time) throws IOException {
        if (files.size() == 1) {
            table.row(row(plate, part, files.get(0), time.tally(), time.handling()));
            return;
        }
        for (int i = 0; i < files.size(); i++) {
            StepTime step = time.steps().get(i);
            table.row(row(plate, part, files.get(i), step.tally(), i == 0 ? time.handling() : 0));
        }
    }

    void write(Appendable out) throws IOException {
        out.append(text);
    }

    /** A cell of a row that was read back. */
    static String cell(List<String> row, String column) {
        return row.get(HEADER.indexOf(column));
    }

    private static List<String> row(Plate plate, Part part, String file, Tally tally, double handling) {
        Group group = plate.group();
        return List.of(
                Integer.toString(plate.number()),
                Integer.toString(part.number()),
                file,
                group.jig().name(),
                group.lens().name(),
                group.recipe().name(),
                group.blank().map(Blank::name).orElse(""),
                Integer.toString(part.seats().size()),
                Decimals.mm(tally.markMm()),
                Decimals.mm(tally.jumpMm()),
                Long.toString(tally.strokes()),
                Decimals.seconds(tally.seconds()),
                Decimals.seconds(handling),
                Decimals.seconds(tally.seconds() + handling));
    }
}
