package dev.quoin.drawing;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.PathIterator;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.CSSUtilities;
import org.apache.batik.bridge.SVGUtilities;
import org.apache.batik.css.engine.SVGCSSEngine;
import org.apache.batik.css.engine.value.Value;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.ShapeNode;
import org.apache.batik.util.ParsedURL;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Works out the region of a clip path (CSS Masking 1, section 7): what its shapes cover by their {@code clip-rule},
 * each cut by its own clip path, and all of it by the clip path's own. Used for one drawing.
 */
final class ClipReader {
    /** So many clip paths are worked out and no more: each may lead to many others. */
    private static final int MOST = 20_000;

    private final NodeBuilder builder;
    private final Reporter reporter;
    private final Set<Element> open = new HashSet<>();
    private int count;

    ClipReader(NodeBuilder builder, Reporter reporter) {
        this.builder = builder;
        this.reporter = reporter;
    }

    /** The region of an element's clip path, in the element's user units; nothing if it has none, or a faulty one. */
    Optional<Area> read(Element element, GraphicsNode node, BridgeContext context) {
        Value value = CSSUtilities.getComputedStyle(element, SVGCSSEngine.CLIP_PATH_INDEX);
        if (!Effects.isReference(value)) {
            return Optional.empty();
        }
        Optional<Element> clipPath = target(value.getStringValue(), element, context);
        if (clipPath.isEmpty()) {
            return Optional.empty();
        }
        if (++count > MOST || !open.add(clipPath.get())) {
            reporter.error(
                    element,
                    "is cut by clip paths that lead back to themselves, or to too many others",
                    "cut it in the editor");
            return Optional.empty();
        }
        try {
            return Optional.of(region(clipPath.get(), node, context));
        } finally {
            open.remove(clipPath.get());
        }
    }

    private Optional<Element> target(String address, Element element, BridgeContext context) {
        ParsedURL url = new ParsedURL(address);
        boolean isOwn = ((SVGOMDocument) context.getDocument()).getParsedURL().sameFile(url);
        String id = url.getRef() == null ? address : url.getRef();
        Element target = isOwn ? context.getDocument().getElementById(id) : null;
        if (target == null || !target.getLocalName().equals("clipPath")) {
            reporter.error(
                    element,
                    "has clip-path " + Troubles.quoted(id) + ", and no <clipPath> of the drawing has that id",
                    "correct it, or take it off");
            return Optional.empty();
        }
        return Optional.of(target);
    }

    private Area region(Element clipPath, GraphicsNode node, BridgeContext context) {
        AffineTransform toUser = new AffineTransform();
        String transform = clipPath.getAttribute("transform");
        if (!transform.isEmpty()) {
            toUser.concatenate(SVGUtilities.convertTransform(clipPath, "transform", transform, context));
        }
        // The clip path's own transform counts in user units, as browsers have it: the box comes first.
        if (clipPath.getAttribute("clipPathUnits").equals("objectBoundingBox")) {
            Box box = bounds(node, true);
            toUser.translate(box.isEmpty() ? 0 : box.minX(), box.isEmpty() ? 0 : box.minY());
            toUser.scale(box.width(), box.height());
        }
        Area region = new Area();
        for (Node child = clipPath.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element shape && isTaken(shape)) {
                region.add(covered(builder.buildReferred(context, shape)));
            }
        }
        region.transform(toUser);
        read(clipPath, node, context).ifPresent(region::intersect);
        return region;
    }

    private boolean isTaken(Element shape) {
        if (shape.getLocalName().equals("text")) {
            reporter.error(shape, "cuts other shapes by its letters, which is not supported", "turn it into paths");
        }
        return switch (shape.getLocalName()) {
            case "path", "rect", "circle", "ellipse", "line", "polyline", "polygon", "use" -> true;
            default -> false;
        };
    }

    /** What a node covers, in the units around it. */
    private Area covered(GraphicsNode node) {
        Area covered = new Area();
        if (node instanceof ShapeNode shape && shape.getShape() != null && isVisible(node)) {
            covered = new Area(Path.of(shape.getShape()).toShape(rule(node)));
        } else if (node instanceof CompositeGraphicsNode composite) {
            for (Object child : composite.getChildren()) {
                covered.add(covered((GraphicsNode) child));
            }
        }
        builder.clip(node).ifPresent(covered::intersect);
        if (node.getTransform() != null) {
            covered.transform(node.getTransform());
        }
        return covered;
    }

    private boolean isVisible(GraphicsNode node) {
        return builder.element(node).map(CSSUtilities::convertVisibility).orElse(false);
    }

    private FillRule rule(GraphicsNode node) {
        int rule = builder.element(node).map(CSSUtilities::convertClipRule).orElse(PathIterator.WIND_NON_ZERO);
        return rule == PathIterator.WIND_EVEN_ODD ? FillRule.EVEN_ODD : FillRule.NON_ZERO;
    }

    /** The box around a node's shapes, strokes left out; in its own units, or those around it. */
    private static Box bounds(GraphicsNode node, boolean own) {
        Box box = Box.EMPTY;
        if (node instanceof ShapeNode shape && shape.getShape() != null) {
            Path path = Path.of(shape.getShape());
            return (own ? path : path.transform(Renderer.affine(node.getTransform()))).bounds();
        }
        if (node instanceof CompositeGraphicsNode composite) {
            for (Object child : composite.getChildren()) {
                box = box.union(bounds((GraphicsNode) child, false));
            }
        }
        return own ? box : Renderer.affine(node.getTransform()).apply(box);
    }
}
