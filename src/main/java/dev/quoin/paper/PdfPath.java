package dev.quoin.paper;

import dev.quoin.geometry.CubicVisitor;
import dev.quoin.geometry.Path;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;

/** Draws a path into a page of a PDF, whose only curves are cubic. */
public final class PdfPath extends CubicVisitor {
    private final PDPageContentStream content;

    private PdfPath(PDPageContentStream content) {
        this.content = content;
    }

    /** Adds the path to what is to be painted next; the origin and the unit are the stream's. */
    public static void draw(Path path, PDPageContentStream content) throws IOException {
        try {
            path.forEach(new PdfPath(content));
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    @Override
    protected void move(double toX, double toY) {
        put(() -> content.moveTo((float) toX, (float) toY));
    }

    @Override
    protected void line(double toX, double toY) {
        put(() -> content.lineTo((float) toX, (float) toY));
    }

    @Override
    protected void curve(
            double fromX, double fromY, double c1x, double c1y, double c2x, double c2y, double toX, double toY) {
        put(() -> content.curveTo((float) c1x, (float) c1y, (float) c2x, (float) c2y, (float) toX, (float) toY));
    }

    @Override
    protected void back() {
        put(content::closePath);
    }

    private interface Operator {
        void write() throws IOException;
    }

    private static void put(Operator operator) {
        try {
            operator.write();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
