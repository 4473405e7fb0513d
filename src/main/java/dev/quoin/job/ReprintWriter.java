package dev.quoin.job;

import dev.quoin.format.PlateKind;
import dev.quoin.lettering.FontLibrary;
import dev.quoin.paper.PaperKind;
import dev.quoin.paper.ReprintSheet;
import dev.quoin.paper.ReprintView;
import dev.quoin.plate.Handling;
import dev.quoin.plate.PlateTime;
import dev.quoin.plate.PlateTimer;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Machine;
import dev.quoin.store.ReprintFolder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Writes a reprint: its plate files, its table, its sheet. */
record ReprintWriter(String run, ReprintRequest request, ReprintFolder folder) {
    /** The ending of a sheet's name, which tells it from a plate of the same kind. */
    private static final String SHEET_PDF = "sheet.pdf";

    Reprint.Written write(int number, ReprintedPlate plate) throws IOException {
        List<PlateTime> times = times(plate);
        List<String> files = new ArrayList<>();
        Map<String, byte[]> contents = new LinkedHashMap<>();
        for (int part = 1; part <= plate.parts().size(); part++) {
            files.add(ReprintFolder.plateFile(number, part, PlateKind.SVG.word()));
            for (PlateKind kind : plateKinds(plate)) {
                contents.put(
                        ReprintFolder.plateFile(number, part, kind.word()),
                        plate(plate, plate.parts().get(part - 1), kind));
            }
        }
        contents.put(ReprintFolder.name(number, "csv"), table(plate, times));
        ReprintView view = new ReprintViews(run, request.reason()).view(plate, number, times);
        contents.put(ReprintFolder.name(number, "html"), sheet(view));
        if (paperKinds(plate).contains(PaperKind.PDF)) {
            contents.put(
                    ReprintFolder.name(number, SHEET_PDF),
                    pdfSheet(view, plate.shop().fonts()));
        }
        folder.write(number, contents);
        return new Reprint.Written(
                number,
                files,
                ReprintFolder.name(number, "html"),
                plate.plates(),
                plate.items(),
                times.stream().mapToDouble(PlateTime::total).sum());
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

    /** What each part takes. */
    private static List<PlateTime> times(ReprintedPlate plate) {
        Machine machine = plate.shop().machine();
        Handling handling = new Handling(machine);
        PlateTimer timer = new PlateTimer(machine, plate.shop().hatched());
        List<PlateTime> times = new ArrayList<>();
        for (int i = 0; i < plate.parts().size(); i++) {
            ReprintedPart part = plate.parts().get(i);
            double before = i == 0
                    ? handling.loading(plate.rows().size())
                    : handling.between(plate.parts().get(i - 1).stand(), part.stand());
            times.add(timer.time(plate.repeated(), part.items(), before));
        }
        return times;
    }

    private static byte[] plate(ReprintedPlate plate, ReprintedPart part, PlateKind kind) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        kind.inField(plate.lens().field(), plate.shop().hatched()).write(out, plate.steps(), part.items());
        return out.toByteArray();
    }

    private static byte[] table(ReprintedPlate plate, List<PlateTime> times) throws IOException {
        StringBuilder table = new StringBuilder();
        ReprintCsv.write(table, plate, times);
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
