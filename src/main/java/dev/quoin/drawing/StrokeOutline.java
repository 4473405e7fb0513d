package dev.quoin.drawing;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;

/** The area that a stroke covers, by the platform's stroker. */
final class StrokeOutline {
    /** The stroker works to a share of a pixel, so a pixel is made a thousandth of a millimetre. */
    private static final double PIXELS_PER_MM = 1000;

    private static final int MOST_DASHES = 50_000;

    private StrokeOutline() {}

    /** The covered area in item coordinates; overlaps count once, by the non-zero rule. */
    static Area of(Shape shape, BasicStroke stroke, Affine toItem) {
        double scale = PIXELS_PER_MM * Math.sqrt(Math.abs(toItem.determinant()));
        if (!(scale > 0)) {
            return Area.EMPTY;
        }
        Shape large = AffineTransform.getScaleInstance(scale, scale).createTransformedShape(shape);
        Path outline = Path.of(scaled(stroke, scale).createStrokedShape(large));
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
