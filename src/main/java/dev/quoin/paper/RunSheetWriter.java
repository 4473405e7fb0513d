package dev.quoin.paper;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Map;

/**
 * Writes a run sheet in pieces, so that no more than one plate is held at a time: a head, a block for each plate in
 * order, a foot. The pieces one after the other are one HTML file (UTF-8) that needs nothing beside it. The blocks can
 * be written before the head, to another writer; writers are neither flushed nor closed.
 */
public final class RunSheetWriter {
    /** Its templates, that which has the most of the language first. */
    public static final List<String> TEMPLATES = List.of(
            "plate-parts.ftlh",
            "run-sheet-summary.ftlh",
            "plate.ftlh",
            "cautions.ftlh",
            "problems.ftlh",
            "run-sheet-head.ftlh",
            "page-start.ftlh",
            "hatches.ftlh",
            "run-sheet-foot.ftlh",
            "run-sheet-packing.ftlh",
            "working-sheet.ftlh");

    /**
     * Writes everything up to the first plate.
     *
     * @throws IOException if the writer fails
     */
    public void head(Writer out, SheetHead head) throws IOException {
        Templates.write("run-sheet-head.ftlh", Map.of("head", head), out);
    }

    /**
     * Writes the block of one plate.
     *
     * @throws IOException if the writer fails
     */
    public void plate(Writer out, PlateView plate) throws IOException {
        Templates.write("plate.ftlh", Map.of("plate", plate, "picture", JigPicture.of(plate.slots())), out);
    }

    /**
     * Writes everything after the last plate.
     *
     * @throws IOException if the writer fails
     */
    public void foot(Writer out, SheetFoot foot) throws IOException {
        Templates.write("run-sheet-foot.ftlh", Map.of("foot", foot), out);
    }
}
