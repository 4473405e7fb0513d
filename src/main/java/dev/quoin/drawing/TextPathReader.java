package dev.quoin.drawing;

import dev.quoin.geometry.Path;
import java.util.Optional;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.GraphicsNodeBridge;
import org.apache.batik.bridge.SVGShapeElementBridge;
import org.apache.batik.bridge.UnitProcessor;
import org.apache.batik.gvt.ShapeNode;
import org.w3c.dom.Element;

/** Reads the path of a {@code textPath}: SVG 1.1, section 10.13.2; any shape may be one (SVG 2, section 11.8.1). */
record TextPathReader(Reporter reporter, BridgeContext context) {
    private static final double FINE = 1e-3;

    /** The path in the text's user units; nothing if there is an error. */
    Optional<TextPath> read(Element textPath) {
        String href = textPath.getAttributeNS(SvgHandler.XLINK, "href");
        Element target = href.startsWith("#") ? context.getDocument().getElementById(href.substring(1)) : null;
        if (target == null || !(context.getBridge(target) instanceof SVGShapeElementBridge)) {
            reporter.error(
                    textPath,
                    "runs along " + Troubles.quoted(href) + ", which is no path or shape of the drawing",
                    "name the path's id, as href=\"#ring\"");
            return Optional.empty();
        }
        tellUnsupported(textPath, "side", "right", "turn the path round to set letters on its other side");
        tellUnsupported(textPath, "method", "stretch", "leave it out: letters are turned along the path, not bent");
        ShapeNode node =
                (ShapeNode) ((GraphicsNodeBridge) context.getBridge(target)).createGraphicsNode(context, target);
        Path path = Path.of(node.getShape()).transform(Renderer.affine(node.getTransform()));
        double length = path.length(
                FINE * Math.max(1e-6, path.bounds().width() + path.bounds().height()) / 100);
        if (!(length > 0)) {
            reporter.error(textPath, "runs along " + Troubles.quoted(href) + ", which has no length", "draw it longer");
            return Optional.empty();
        }
        return Optional.of(new TextPath(href.substring(1), path, start(textPath, target, length)));
    }

    private void tellUnsupported(Element textPath, String attribute, String value, String remedy) {
        if (textPath.getAttribute(attribute).equals(value)) {
            reporter.error(textPath, "has " + attribute + "=\"" + value + "\", which is not supported", remedy);
        }
    }

    private double start(Element textPath, Element target, double length) {
        String value = textPath.getAttribute("startOffset").strip();
        if (value.isEmpty()) {
            return 0;
        }
        if (value.endsWith("%")) {
            return Double.parseDouble(value.substring(0, value.length() - 1)) / 100 * length;
        }
        double start = UnitProcessor.svgOtherLengthToUserSpace(
                value, "startOffset", UnitProcessor.createContext(context, textPath));
        String measured = target.getAttribute("pathLength").strip();
        return measured.isEmpty() ? start : start * length / Double.parseDouble(measured);
    }
}
