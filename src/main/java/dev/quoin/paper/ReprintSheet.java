package dev.quoin.paper;

import dev.quoin.lettering.FontLibrary;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.util.List;
import java.util.Map;

/** Writes the small sheet of a reprint: as one HTML file (UTF-8) that needs nothing beside it, or as PDF. */
public final class ReprintSheet {
    /** Its templates, that which has the most of the language first. */
    public static final List<String> TEMPLATES = List.of(
            "plate-parts.ftlh",
            "reprint-content.ftlh",
            "cautions.ftlh",
            "reprint-sheet.ftlh",
            "page-start.ftlh",
            "hatches.ftlh");

    /**
     * Writes the whole sheet; the writer is neither flushed nor closed.
     *
     * @throws IOException if the writer fails
     */
    public void write(Writer out, ReprintView reprint) throws IOException {
        Templates.write("reprint-sheet.ftlh", view(reprint), out);
    }

    /**
     * Writes the whole sheet as PDF; the stream stays open.
     *
     * @param fonts those of the run
     * @throws IOException if the stream fails, or a bundled font cannot be read
     */
    public void writePdf(OutputStream out, ReprintView reprint, FontLibrary fonts) throws IOException {
        try (PdfPages pages = new PdfPages("Reprint " + reprint.number() + ": " + reprint.run(), "sheet.css", fonts)) {
            pages.add("reprint-content.ftlh", view(reprint));
            pages.save(out);
        }
    }

    private static Map<String, Object> view(ReprintView reprint) {
        PlateView plate = reprint.plate();
        return Map.of("reprint", reprint, "plate", plate, "picture", JigPicture.of(plate.slots()));
    }
}
