package dev.quoin.drawing;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import dev.quoin.geometry.Polyline;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Path2D;

/**
 * The area that a stroke covers, by the platform's stroker. It gets straight lines only: it offsets curves so roughly
 * that the area of a curved stroke comes out some per cent too large.
 */
final class StrokeOutline {
    /** The stroker works to a share of a pixel, so a pixel is made a thousandth of a millimetre. */
    private static final double PIXELS_PER_MM = 1000;

    /** How far the lines may leave the curves, in those pixels. */
    private static final double TOLERANCE = 2;

    private static final int MOST_DASHES = 50_000;

    private StrokeOutline() {}

    /** The covered area in item coordinates; overlaps count once, by the non-zero rule. */
    static Area of(Path path, BasicStroke stroke, Affine toItem) {
        double scale = PIXELS_PER_MM * Math.sqrt(Math.abs(toItem.determinant()));
        if (!(scale > 0)) {
            return Area.EMPTY;
        }
        Shape lines = lines(path.transform(Affine.scale(scale, scale)));
        Path outline = Path.of(scaled(stroke, scale).createStrokedShape(lines));
        return new Area(outline.transform(Affine.scale(1 / scale, 1 / scale).then(toItem)), FillRule.NON_ZERO);
    }

    /** Whether its dashes are so many that drawing them would never end. */
    static boolean isEndless(Path path, BasicStroke stroke) {
        float[] dashes = stroke.getDashArray();
        if (dashes == null) {
            return false;
        }
        double period = 0;
        for (float dash : dashes) {
            period += dash;
        }
        double length =
                path.length(Math.max(1e-3, path.bounds().width() + path.bounds().height()) / 100);
        return length / period > MOST_DASHES;
    }

    private static Shape lines(Path path) {
        Path2D lines = new Path2D.Double();
        for (Polyline line : path.flatten(TOLERANCE)) {
            lines.moveTo(line.x(0), line.y(0));
            // A lone point gets its caps (SVG 1.1, section 11.4) if it is drawn as a line without length.
            for (int i = line.size() == 1 ? 0 : 1; i < line.size(); i++) {
                lines.lineTo(line.x(i), line.y(i));
            }
            if (line.closed() && line.size() > 1) {
                lines.closePath();
            }
        }
        return lines;
    }

    private static BasicStroke scaled(BasicStroke stroke, double scale) {
        float[] dashes = stroke.getDashArray();
        if (dashes != null) {
            for (int i = 0; i < dashes.length; i++) {
                dashes[i] *= (float) scale;
            }
        }
        return new BasicStroke(
                (float) (stroke.getLineWidth() * scale),
                stroke.getEndCap(),
                stroke.getLineJoin(),
                stroke.getMiterLimit(),
                dashes,
                (float) (stroke.getDashPhase() * scale));
    }
}
