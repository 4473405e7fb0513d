package dev.quoin.format;

import dev.quoin.art.Mark;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.FillRule;
import dev.quoin.paper.PdfPath;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.StepColour;
import dev.quoin.shop.Method;
import dev.quoin.shop.Step;
import java.awt.Color;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.util.Matrix;

/**
 * A plate as PDF (ISO 32000-1) at true size: one page that is the field, one layer (optional content, 8.11) a step, paths
 * only, curves kept. Coordinates are mm from the page's lower left, y up. Areas and paths are painted as in {@link
 * PlateSvg}. Nothing in it depends on the time or on chance.
 */
final class PlatePdf implements PlateFormat {
    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final float LINE = 0.05f;
    /** Optional content came with PDF 1.5. */
    private static final float VERSION = 1.5f;

    private final double field;
    private final boolean hatched;

    PlatePdf(double field, boolean hatched) {
        this.field = field;
        this.hatched = hatched;
    }

    @Override
    public void write(OutputStream out, List<Step> steps, List<LoadedItem> items) throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.setVersion(VERSION);
            // Otherwise the file's identifier would be made from the clock.
            document.setDocumentId(0L);
            float side = (float) (field * POINTS_PER_MM);
            PDPage page = new PDPage(new PDRectangle(side, side));
            document.addPage(page);
            PDOptionalContentProperties layers = new PDOptionalContentProperties();
            document.getDocumentCatalog().setOCProperties(layers);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.transform(Matrix.getScaleInstance((float) POINTS_PER_MM, (float) POINTS_PER_MM));
                content.setLineWidth(LINE);
                for (Step step : steps) {
                    PDOptionalContentGroup layer = new PDOptionalContentGroup(step.id());
                    layers.addGroup(layer);
                    content.beginMarkedContent(COSName.OC, layer);
                    write(content, step, items);
                    content.endMarkedContent();
                }
            }
            document.save(out, CompressParameters.NO_COMPRESSION);
        }
    }

    private void write(PDPageContentStream content, Step step, List<LoadedItem> items) throws IOException {
        Color colour = Color.decode(StepColour.of(step.number()).hex());
        content.setStrokingColor(colour);
        content.setNonStrokingColor(colour);
        for (LoadedItem item : items) {
            Affine toPage = item.placement().pose().then(Affine.translate(field / 2, field / 2));
            for (Mark mark : item.marks(step)) {
                write(content, hatched || step.method() == Method.FOLLOW, mark.transform(toPage));
            }
        }
    }

    private static void write(PDPageContentStream content, boolean lines, Mark mark) throws IOException {
        if (lines) {
            PdfPath.draw(mark.path(), content);
            content.stroke();
        } else {
            PdfPath.draw(mark.area().outline(), content);
            if (mark.area().rule() == FillRule.EVEN_ODD) {
                content.fillEvenOdd();
            } else {
                content.fill();
            }
        }
    }
}
