package dev.quoin.job;

import dev.quoin.lettering.FontLibrary;
import dev.quoin.paper.PlateView;
import dev.quoin.paper.RunSheetPdf;
import dev.quoin.paper.RunSheetWriter;
import dev.quoin.paper.SheetFoot;
import dev.quoin.paper.SheetHead;
import dev.quoin.store.RunFolder;
import dev.quoin.store.Spool;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The run sheet while a run is written, as every kind of paper that the job asks for. */
final class RunSheets implements AutoCloseable {
    private final RunFolder folder;
    private final RunSheetWriter html = new RunSheetWriter();
    private final Spool blocks;
    private final Optional<RunSheetPdf> pdf;

    /**
     * Begins the sheet.
     *
     * @param run its name
     * @param pdf whether it is written as PDF too
     */
    RunSheets(RunFolder folder, String run, boolean pdf, FontLibrary fonts) throws IOException {
        this.folder = folder;
        this.blocks = folder.spool();
        this.pdf = pdf ? Optional.of(new RunSheetPdf(run, fonts)) : Optional.empty();
    }

    /** The block of a plate; may be made by several threads. */
    static String block(PlateView view) throws IOException {
        StringWriter block = new StringWriter();
        new RunSheetWriter().plate(block, view);
        return block.toString();
    }

    void plate(PlateView view, String block) throws IOException {
        blocks.writer().write(block);
        if (pdf.isPresent()) {
            pdf.get().plate(view);
        }
    }

    /**
     * Writes the files.
     *
     * @param numbered gives a file's name the number of the section
     * @return their names, the HTML first
     */
    List<String> write(UnaryOperator<String> numbered, SheetHead head, SheetFoot foot) throws IOException {
        List<String> files = new ArrayList<>();
        files.add(numbered.apply("run-sheet.html"));
        try (Writer out = folder.createText(files.get(0))) {
            html.head(out, head);
            blocks.copyTo(out);
            html.foot(out, foot);
        }
        if (pdf.isPresent()) {
            files.add(numbered.apply("run-sheet.pdf"));
            try (OutputStream out = folder.create(files.get(1))) {
                pdf.get().save(out, head, foot);
            }
        }
        return files;
    }

    @Override
    public void close() throws IOException {
        blocks.close();
        if (pdf.isPresent()) {
            pdf.get().close();
        }
    }
}
