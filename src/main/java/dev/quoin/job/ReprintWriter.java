package dev.quoin.job;

import dev.quoin.format.PlateKind;
import dev.quoin.lettering.FontLibrary;
import dev.quoin.paper.PaperKind;
import dev.quoin.paper.ReprintSheet;
import dev.quoin.paper.ReprintView;
import dev.quoin.plate.Handling;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.PlateTime;
import dev.quoin.plate.PlateTimer;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Machine;
import dev.quoin.store.ReprintFolder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** Writes a reprint: its plate file, its table, its sheet. */
record ReprintWriter(String run, ReprintRequest request, ReprintFolder folder) {
    /** The ending of a sheet's name, which tells it from a plate of the same kind. */
    private static final String SHEET_PDF = "sheet.pdf";

    Reprint.Written write(int number, ReprintedPlate plate) throws IOException {
        Machine machine = plate.shop().machine();
        PlateTime time = new PlateTimer(machine, plate.shop().hatched())
                .time(
                        plate.repeated(),
                        plate.items(),
                        new Handling(machine).loading(plate.items().size()));
        Map<String, byte[]> contents = new LinkedHashMap<>();
        for (PlateKind kind : plateKinds(plate)) {
            contents.put(kind.word(), plate(plate, kind));
        }
        contents.put("csv", table(plate, time));
        ReprintView view = new ReprintViews(run, request.reason()).view(plate, number, time);
        contents.put("html", sheet(view));
        if (paperKinds(plate).contains(PaperKind.PDF)) {
            contents.put(SHEET_PDF, pdfSheet(view, plate.shop().fonts()));
        }
        folder.write(number, contents);
        return new Reprint.Written(
                number,
                ReprintFolder.name(number, "svg"),
                ReprintFolder.name(number, "html"),
                plate.plates(),
                plate.items().stream().map(LoadedItem::item).toList(),
                time.total());
    }

    private Set<PlateKind> plateKinds(ReprintedPlate plate) {
        return request.plateFormats().isEmpty()
                ? plate.shop().kinds().plates()
                : Kinds.plates(request.plateFormats(), Reprint.PLATE_FORMAT, new Problems());
    }

    private Set<PaperKind> paperKinds(ReprintedPlate plate) {
        return request.sheets().isEmpty()
                ? plate.shop().kinds().papers()
                : Kinds.papers(request.sheets(), Reprint.SHEET, new Problems());
    }

    private static byte[] plate(ReprintedPlate plate, PlateKind kind) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        kind.inField(plate.lens().field(), plate.shop().hatched()).write(out, plate.steps(), plate.items());
        return out.toByteArray();
    }

    private static byte[] table(ReprintedPlate plate, PlateTime time) throws IOException {
        StringBuilder table = new StringBuilder();
        ReprintCsv.write(table, plate, time);
        return table.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] sheet(ReprintView view) throws IOException {
        StringWriter sheet = new StringWriter();
        new ReprintSheet().write(sheet, view);
        return sheet.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] pdfSheet(ReprintView view, FontLibrary fonts) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new ReprintSheet().writePdf(out, view, fonts);
        return out.toByteArray();
    }
}
