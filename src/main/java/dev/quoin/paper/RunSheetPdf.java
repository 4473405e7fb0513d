package dev.quoin.paper;

import dev.quoin.lettering.FontLibrary;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Map;

/** A run sheet as PDF, with the same content as that of {@link RunSheetWriter}; plates are given first, in their order. */
public final class RunSheetPdf implements AutoCloseable {
    private final PdfPages pages;

    /**
     * Begins a sheet.
     *
     * @param run its name
     * @param fonts those of the job
     * @throws IOException if a bundled font cannot be read
     */
    public RunSheetPdf(String run, FontLibrary fonts) throws IOException {
        pages = new PdfPages("Run sheet: " + run, "sheet.css", fonts);
    }

    /** Adds the pages of a plate. */
    public void plate(PlateView plate) throws IOException {
        pages.add("plate.ftlh", Map.of("plate", plate, "picture", JigPicture.of(plate.slots())));
    }

    /** Adds what stands before and after the plates, and writes the whole. The stream stays open. */
    public void save(OutputStream out, SheetHead head, SheetFoot foot) throws IOException {
        int plates = pages.count();
        pages.add("run-sheet-summary.ftlh", Map.of("head", head));
        pages.putFirst(plates);
        if (!foot.parcels().isEmpty()) {
            pages.add("run-sheet-packing.ftlh", Map.of("foot", foot));
        }
        pages.save(out);
    }

    @Override
    public void close() throws IOException {
        pages.close();
    }
}
