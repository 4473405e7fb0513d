package dev.quoin.drawing;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Clip;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.util.Optional;
import java.util.Set;
import org.apache.batik.bridge.CSSUtilities;
import org.w3c.dom.Element;

/** Turns Batik's shapes into ours. */
record ShapeReader(Origins origins, Reporter reporter) {
    private static final double FARTHEST_MM = 100_000;

    /** The shape of an element; nothing if it has no extent at all. */
    Optional<Drawn> read(Element element, Shape shape, Painting painting, Affine toItem, Optional<Clip> clip) {
        if (shape == null) {
            return Optional.empty();
        }
        Path local = Path.of(shape);
        if (local.isEmpty() || !isNear(element, local.transform(toItem).bounds()) || isFlat(element, local)) {
            return Optional.empty();
        }
        Area outline = painting.stroke()
                .map(stroke -> outline(element, local, stroke, toItem))
                .orElse(Area.EMPTY);
        DrawnShape whole =
                new DrawnShape(origins.of(element), local, toItem, rule(element), painting.filled(), outline);
        return Optional.of(clip.map(whole::through).orElse(whole));
    }

    /** A rectangle, circle or ellipse with a size of 0 is not drawn, its stroke neither (SVG 1.1, section 9). */
    private static boolean isFlat(Element element, Path local) {
        boolean hasSize = Set.of("rect", "circle", "ellipse").contains(element.getLocalName());
        return hasSize && (local.bounds().width() == 0 || local.bounds().height() == 0);
    }

    private Area outline(Element element, Path local, BasicStroke stroke, Affine toItem) {
        if (StrokeOutline.isEndless(local, stroke)) {
            reporter.error(element, "has too many dashes", "make its dashes longer, or its stroke solid");
            return Area.EMPTY;
        }
        return StrokeOutline.of(local, stroke, toItem);
    }

    private boolean isNear(Element element, Box box) {
        boolean near = Box.centred(2 * FARTHEST_MM, 2 * FARTHEST_MM).contains(box, 0)
                && !Double.isNaN(box.width() + box.height());
        if (!near) {
            reporter.error(element, "stands more than 100 m away from the page", "correct its numbers");
        }
        return near;
    }

    private static FillRule rule(Element element) {
        return CSSUtilities.convertFillRule(element) == PathIterator.WIND_EVEN_ODD
                ? FillRule.EVEN_ODD
                : FillRule.NON_ZERO;
    }
}
