package dev.quoin.paper;

import dev.quoin.geometry.Path;
import dev.quoin.geometry.PathVisitor;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;

/** Draws a path into a page of a PDF, whose only curves are cubic. */
public final class PdfPath implements PathVisitor {
    private final PDPageContentStream content;
    private double x;
    private double y;
    private double startX;
    private double startY;

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
    public void moveTo(double toX, double toY) {
        startX = toX;
        startY = toY;
        put(() -> content.moveTo((float) toX, (float) toY), toX, toY);
    }

    @Override
    public void lineTo(double toX, double toY) {
        put(() -> content.lineTo((float) toX, (float) toY), toX, toY);
    }

    /** The cubic that is the same curve: its control points lie two thirds of the way to the one of the quadratic. */
    @Override
    public void quadTo(double cx, double cy, double toX, double toY) {
        cubicTo(
                x + (cx - x) * 2 / 3,
                y + (cy - y) * 2 / 3,
                toX + (cx - toX) * 2 / 3,
                toY + (cy - toY) * 2 / 3,
                toX,
                toY);
    }

    @Override
    public void cubicTo(double c1x, double c1y, double c2x, double c2y, double toX, double toY) {
        put(
                () -> content.curveTo((float) c1x, (float) c1y, (float) c2x, (float) c2y, (float) toX, (float) toY),
                toX,
                toY);
    }

    @Override
    public void close() {
        put(content::closePath, startX, startY);
    }

    private interface Operator {
        void write() throws IOException;
    }

    private void put(Operator operator, double toX, double toY) {
        try {
            operator.write();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        x = toX;
        y = toY;
    }
}
