package dev.quoin.drawing;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.Clip;
import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;
import dev.quoin.problem.Problems;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.ShapeNode;
import org.w3c.dom.Element;

/** Draws a document once, and gathers what it shows in paint order. Used once and thrown away. */
final class Renderer {
    private final NodeBuilder builder;
    private final DrawingContext context;
    private final SvgDom dom;
    private final Frame frame;
    private final boolean anew;
    private final ShapeReader shapes;
    private final List<Drawn> constant = new ArrayList<>();
    private final List<List<Drawn>> parts = new ArrayList<>();

    private Renderer(
            SvgElement root,
            Frame frame,
            Variation variation,
            Merge merge,
            boolean anew,
            Pictures pictures,
            Problems problems) {
        QuietAgent agent = new QuietAgent();
        Predicate<SvgElement> kept = anew ? new Pruning(root, variation)::keeps : element -> true;
        this.dom = SvgDom.build(root, frame.viewBox(), merge, kept, agent);
        Reporter reporter = new Reporter(dom, problems);
        Origins origins = new Origins(dom, merge);
        this.builder = new NodeBuilder(origins, variation, anew, pictures, reporter, agent);
        this.context = new DrawingContext(agent, builder);
        this.frame = frame;
        this.anew = anew;
        this.shapes = new ShapeReader(origins, reporter);
        for (int i = 0; i < variation.size(); i++) {
            parts.add(new ArrayList<>());
        }
    }

    /** All of the drawing, with its varying parts left open. */
    static List<Drawn> constant(
            SvgElement root, Frame frame, Variation variation, Pictures pictures, Problems problems) {
        Renderer renderer = new Renderer(root, frame, variation, Merge.NONE, false, pictures, problems);
        renderer.run();
        return List.copyOf(renderer.constant);
    }

    /** The varying parts, by their numbers. */
    static List<List<Drawn>> anew(
            SvgElement root, Frame frame, Variation variation, Merge merge, Pictures pictures, Problems problems) {
        Renderer renderer = new Renderer(root, frame, variation, merge, true, pictures, problems);
        renderer.run();
        return renderer.parts.stream().map(List::copyOf).toList();
    }

    private void run() {
        context.prepare(dom.document());
        try {
            GraphicsNode top = builder.build(context, dom.document());
            walk(top, frame.toItem(), Optional.empty(), constant);
        } finally {
            context.dispose();
        }
    }

    private void walk(GraphicsNode node, Affine above, Optional<Clip> clipAbove, List<Drawn> out) {
        Affine toItem = affine(node.getTransform()).then(above);
        Optional<Element> element = builder.element(node);
        int part = element.map(builder::part).orElse(-1);
        if (part >= 0 && !anew) {
            out.add(new DrawnVariable(part));
            return;
        }
        Optional<Clip> clip = clipped(node, element, toItem, clipAbove);
        List<Drawn> to = part >= 0 ? parts.get(part) : out;
        if (element.isPresent() && node instanceof ShapeNode shape) {
            Painting painting = builder.painting(node);
            shapes.read(element.get(), shape.getShape(), painting, toItem, clip).ifPresent(to::add);
        } else if (builder.text(node).isPresent()) {
            to.add(moved(builder.text(node).get(), toItem, clip));
        } else if (node instanceof CompositeGraphicsNode composite) {
            for (DrawnShape shape : builder.picture(node)) {
                DrawnShape laid = shape.in(shape.element(), toItem);
                to.add(clip.map(laid::through).orElse(laid));
            }
            for (Object child : composite.getChildren()) {
                walk((GraphicsNode) child, toItem, clip, to);
            }
        }
    }

    private static DrawnText moved(DrawnText text, Affine toItem, Optional<Clip> clip) {
        return new DrawnText(
                text.element(), text.lines(), toItem, text.strokeWidth(), text.filled(), text.along(), clip);
    }

    /** The window above, narrowed by the node's own clip path and, for a nested {@code svg} or symbol, its edge. */
    private Optional<Clip> clipped(
            GraphicsNode node, Optional<Element> element, Affine toItem, Optional<Clip> clipAbove) {
        List<Path> regions = new ArrayList<>();
        builder.clip(node).ifPresent(region -> regions.add(Path.of(region)));
        // The outermost is the page, which cuts off nothing.
        boolean isPage =
                element.map(e -> e == e.getOwnerDocument().getDocumentElement()).orElse(true);
        if (!isPage && node.getClip() != null) {
            regions.add(Path.of(node.getClip().getClipPath().getBounds2D()));
        }
        Optional<Clip> clip = clipAbove;
        for (Path region : regions) {
            Clip own = new Clip(new Area(region.transform(toItem), FillRule.NON_ZERO));
            clip = Optional.of(clip.map(own::and).orElse(own));
        }
        return clip;
    }

    static Affine affine(AffineTransform t) {
        return t == null
                ? Affine.IDENTITY
                : new Affine(
                        t.getScaleX(),
                        t.getShearY(),
                        t.getShearX(),
                        t.getScaleY(),
                        t.getTranslateX(),
                        t.getTranslateY());
    }
}
