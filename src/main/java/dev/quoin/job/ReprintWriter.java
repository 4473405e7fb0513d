package dev.quoin.job;

import dev.quoin.format.PlateSvg;
import dev.quoin.paper.ReprintSheet;
import dev.quoin.plate.Handling;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.PlateTime;
import dev.quoin.plate.PlateTimer;
import dev.quoin.shop.Machine;
import dev.quoin.store.ReprintFolder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** Writes a reprint: its plate file, its table, its sheet. */
record ReprintWriter(String run, String reason, ReprintFolder folder) {
    Reprint.Written write(int number, ReprintedPlate plate) throws IOException {
        Machine machine = plate.shop().machine();
        PlateTime time = new PlateTimer(machine, plate.shop().hatched())
                .time(
                        plate.repeated(),
                        plate.items(),
                        new Handling(machine).loading(plate.items().size()));
        Map<String, byte[]> contents = new LinkedHashMap<>();
        contents.put("svg", svg(plate));
        contents.put("csv", table(plate, time));
        contents.put("html", sheet(number, plate, time));
        folder.write(number, contents);
        return new Reprint.Written(
                number,
                ReprintFolder.name(number, "svg"),
                ReprintFolder.name(number, "html"),
                plate.plates(),
                plate.items().stream().map(LoadedItem::item).toList(),
                time.total());
    }

    private static byte[] svg(ReprintedPlate plate) throws IOException {
        ByteArrayOutputStream svg = new ByteArrayOutputStream();
        new PlateSvg(plate.lens().field(), plate.shop().hatched()).write(svg, plate.steps(), plate.items());
        return svg.toByteArray();
    }

    private static byte[] table(ReprintedPlate plate, PlateTime time) throws IOException {
        StringBuilder table = new StringBuilder();
        ReprintCsv.write(table, plate, time);
        return table.toString().getBytes(StandardCharsets.UTF_8);
    }

    private byte[] sheet(int number, ReprintedPlate plate, PlateTime time) throws IOException {
        StringWriter sheet = new StringWriter();
        new ReprintSheet().write(sheet, new ReprintViews(run, reason).view(plate, number, time));
        return sheet.toString().getBytes(StandardCharsets.UTF_8);
    }
}
