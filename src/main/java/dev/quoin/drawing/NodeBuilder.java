package dev.quoin.drawing;

import java.awt.geom.Area;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.batik.bridge.Bridge;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.BridgeException;
import org.apache.batik.bridge.CSSUtilities;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.GraphicsNodeBridge;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.ShapeNode;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Builds Batik's tree of graphics nodes, element by element, so that one bad element hides no other problem. Painting is
 * left out: what is painted and how is asked of the elements later.
 */
final class NodeBuilder extends GVTBuilder {
    private static final Set<String> NOT_DRAWN = Set.of(
            "defs",
            "symbol",
            "style",
            "linearGradient",
            "radialGradient",
            "pattern",
            "clipPath",
            "mask",
            "filter",
            "marker",
            "view",
            "cursor",
            "font",
            "font-face",
            "color-profile",
            "solidcolor",
            "solidColor",
            "meshgradient",
            "hatch");

    private final SvgDom dom;
    private final Variation variation;
    private final boolean anew;
    private final Effects effects;
    private final Styles styles;
    private final Troubles troubles;
    private final Reporter reporter;
    private final Origins origins;
    private final Map<GraphicsNode, Element> elements = new IdentityHashMap<>();
    private final Map<GraphicsNode, Painting> paintings = new IdentityHashMap<>();
    private final Map<GraphicsNode, DrawnText> texts = new IdentityHashMap<>();
    private final Map<GraphicsNode, Area> clips = new IdentityHashMap<>();
    private final Map<GraphicsNode, List<DrawnShape>> pictures = new IdentityHashMap<>();
    private final ClipReader clipReader;
    private final PictureReader pictureReader;
    /** How many parts that are drawn anew the element just built stands in. */
    private int insideParts;
    /** How many clip paths: what stands in one is not painted. */
    private int insideClips;

    /** @param anew whether the varying parts are drawn, or else all but those */
    NodeBuilder(
            Origins origins,
            Variation variation,
            boolean anew,
            Pictures pictures,
            Reporter reporter,
            QuietAgent agent) {
        this.dom = origins.dom();
        this.origins = origins;
        this.reporter = reporter;
        this.variation = variation;
        this.anew = anew;
        this.effects = new Effects(reporter);
        this.styles = new Styles(reporter, agent);
        this.troubles = new Troubles(reporter);
        this.clipReader = new ClipReader(this, reporter);
        this.pictureReader = new PictureReader(origins, pictures, reporter);
    }

    /** The element that a node was built from, if it is one that can be marked, or stands for a varying part. */
    Optional<Element> element(GraphicsNode node) {
        return Optional.ofNullable(elements.get(node));
    }

    /** How a shape is painted. */
    Painting painting(GraphicsNode node) {
        return paintings.getOrDefault(node, Painting.NONE);
    }

    /** The text that a node stands for, in its own user units. */
    Optional<DrawnText> text(GraphicsNode node) {
        return Optional.ofNullable(texts.get(node));
    }

    /** What an image shows, in its own user units. */
    List<DrawnShape> picture(GraphicsNode node) {
        return pictures.getOrDefault(node, List.of());
    }

    /** What a node's clip path lets through, in its own user units. */
    Optional<Area> clip(GraphicsNode node) {
        return Optional.ofNullable(clips.get(node));
    }

    /** The varying part that starts at an element; -1 if none does. */
    int part(Element element) {
        return dom.origin(element).map(variation::part).orElse(-1);
    }

    @Override
    public GraphicsNode build(BridgeContext context, Document document) {
        GraphicsNode canvas = build(context, document.getDocumentElement());
        CompositeGraphicsNode top = new CompositeGraphicsNode();
        top.add(canvas);
        return top;
    }

    @Override
    protected void buildGraphicsNode(BridgeContext context, Element element, CompositeGraphicsNode parent) {
        parent.add(build(context, element));
    }

    /** Never null; an empty node where there is nothing to draw. */
    @Override
    public GraphicsNode build(BridgeContext context, Element element) {
        int part = part(element);
        if (part >= 0 && !anew) {
            return remember(new CompositeGraphicsNode(), element);
        }
        boolean leads = dom.origin(element).map(variation::leadsToPart).orElse(false);
        if (anew && insideParts == 0 && !leads) {
            return new CompositeGraphicsNode();
        }
        insideParts += part >= 0 ? 1 : 0;
        try {
            return draw(context, element).orElseGet(CompositeGraphicsNode::new);
        } catch (BridgeException e) {
            troubles.tell(element, e);
        } catch (RuntimeException e) {
            // Batik's answer to much that is malformed; the file is at fault, so its reader is told where.
            troubles.tell(element, e);
        } finally {
            insideParts -= part >= 0 ? 1 : 0;
        }
        return new CompositeGraphicsNode();
    }

    /** Builds an element of a clip path: whole, wherever the part stands that it cuts. */
    GraphicsNode buildReferred(BridgeContext context, Element element) {
        insideParts++;
        insideClips++;
        try {
            return build(context, element);
        } finally {
            insideParts--;
            insideClips--;
        }
    }

    private Optional<GraphicsNode> draw(BridgeContext context, Element element) {
        Bridge bridge = context.getBridge(element);
        if (!(bridge instanceof GraphicsNodeBridge nodeBridge)) {
            if (!NOT_DRAWN.contains(element.getLocalName())) {
                troubles.unsupported(element);
            }
            return Optional.empty();
        }
        boolean shown = CSSUtilities.convertDisplay(element);
        styles.check(element);
        if (!shown) {
            return Optional.empty();
        }
        if (element.getLocalName().equals("use") && !troubles.leadsInside(element, context)) {
            return Optional.empty();
        }
        if (insideClips == 0) {
            effects.check(element);
        }
        RoundShapes.settleRadii(element, context);
        GraphicsNode node = nodeBridge.createGraphicsNode(context, element);
        if (node == null) {
            return Optional.empty();
        }
        if (nodeBridge.isComposite()) {
            buildComposite(context, element, (CompositeGraphicsNode) node);
        }
        clipReader.read(element, node, context).ifPresent(clip -> clips.put(node, clip));
        if (element.getLocalName().equals("svg")) {
            context.closeViewport(element);
        }
        // Styles in percent depend on the viewport, so they are asked for while it is open.
        if (node instanceof ShapeNode && insideClips == 0) {
            paintings.put(node, Painting.of(element, reporter));
        } else if (element.getLocalName().equals("text")) {
            TextReader.read(element, origins, reporter, context).ifPresent(text -> texts.put(node, text));
        } else if (element.getLocalName().equals("image")) {
            pictures.put(node, pictureReader.read(element, context));
        }
        return Optional.of(remember(node, element));
    }

    private GraphicsNode remember(GraphicsNode node, Element element) {
        elements.put(node, element);
        return node;
    }
}
