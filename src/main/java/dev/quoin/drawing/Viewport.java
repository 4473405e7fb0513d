package dev.quoin.drawing;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.batik.gvt.GraphicsNode;
import org.w3c.dom.Element;

/**
 * The window of a nested {@code svg} or {@code symbol}, which cuts off what stands over its edge.
 *
 * @param element whose window it is
 * @param box the window, in the element's inner user units
 * @param toItem the move from there into item coordinates
 */
record Viewport(Element element, Box box, Affine toItem) {
    private static final double TOLERANCE_MM = 0.001;

    /** The windows that hold inside a node. The outermost is the page, which cuts off nothing. */
    static List<Viewport> inside(GraphicsNode node, Optional<Element> element, Affine toItem, List<Viewport> outside) {
        boolean isRoot =
                element.map(e -> e == e.getOwnerDocument().getDocumentElement()).orElse(true);
        if (isRoot || node.getClip() == null || toItem.determinant() == 0) {
            return outside;
        }
        Rectangle2D window = node.getClip().getClipPath().getBounds2D();
        List<Viewport> inside = new ArrayList<>(outside);
        inside.add(new Viewport(
                element.get(),
                new Box(window.getMinX(), window.getMinY(), window.getMaxX(), window.getMaxY()),
                toItem));
        return inside;
    }

    /** Whether a shape shows whole. */
    boolean holds(DrawnShape shape) {
        Affine back = toItem.inverse();
        Box ink = shape.strokeOutline().outline().transform(back).bounds();
        Box all = shape.filled() ? ink.union(shape.path().transform(back).bounds()) : ink;
        return box.contains(all, TOLERANCE_MM / Math.sqrt(Math.abs(toItem.determinant())));
    }
}
