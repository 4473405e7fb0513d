package dev.quoin.paper;

import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer.SVGImage;
import com.openhtmltopdf.pdfboxout.PdfBoxOutputDevice;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Rectangle;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.util.Matrix;
import org.w3c.dom.Element;

/** A picture of a paper on a PDF page, as a form of its own (ISO 32000-1, 8.10). */
final class PdfSketch implements SVGImage {
    private final PdfSketches sketches;
    private final Element svg;
    private final double width;
    private final double height;

    /**
     * Makes a picture.
     *
     * @param width on paper, dots of the layout
     * @param height on paper, dots of the layout
     */
    PdfSketch(PdfSketches sketches, Element svg, double width, double height) {
        this.sketches = sketches;
        this.svg = svg;
        this.width = width;
        this.height = height;
    }

    /**
     * How wide or high a picture is to be.
     *
     * @param written as the element has it, mm
     * @param styled as the style sheet has it, dots; negative where it does not say
     */
    record Size(String written, double styled, double dotsPerPixel) {
        private static final double PIXELS_PER_MM = 96 / 25.4;

        double dots() {
            return styled >= 0 || written.isEmpty()
                    ? Math.max(styled, 0)
                    : Double.parseDouble(written.replace("mm", "")) * PIXELS_PER_MM * dotsPerPixel;
        }
    }

    @Override
    public int getIntrinsicWidth() {
        return (int) Math.round(width);
    }

    @Override
    public int getIntrinsicHeight() {
        return (int) Math.round(height);
    }

    @Override
    public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
        PdfBoxOutputDevice pdf = (PdfBoxOutputDevice) device;
        try {
            PDFormXObject form = form(pdf.getDotsPerPoint());
            Rectangle place = new Rectangle((int) x, (int) y, getIntrinsicWidth(), getIntrinsicHeight());
            pdf.drawPdfAsImage(form, place, getIntrinsicWidth(), getIntrinsicHeight());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private PDFormXObject form(double dotsPerPoint) throws IOException {
        float points = (float) (height / dotsPerPoint);
        PDAppearanceStream form = sketches.emptyForm(new PDRectangle((float) (width / dotsPerPoint), points));
        try (PDPageContentStream content = sketches.content(form)) {
            content.transform(fit(viewBox(), width / dotsPerPoint, points));
            new SketchPainter(sketches, content).paint(svg, SketchStyle.PLAIN);
        }
        return form;
    }

    private double[] viewBox() {
        String[] words = svg.getAttribute("viewBox").trim().split("\\s+");
        double[] box = new double[4];
        for (int i = 0; i < box.length; i++) {
            box[i] = Double.parseDouble(words[i]);
        }
        return box;
    }

    /** As large as fits, in the middle, y upward. */
    private static Matrix fit(double[] box, double width, double height) {
        double scale = Math.min(width / box[2], height / box[3]);
        double x = (width - box[2] * scale) / 2 - box[0] * scale;
        double y = (height - box[3] * scale) / 2 - box[1] * scale;
        return new Matrix((float) scale, 0, 0, (float) -scale, (float) x, (float) (height - y));
    }
}
