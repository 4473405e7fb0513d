package dev.quoin.drawing;

import dev.quoin.geometry.FillRule;
import org.apache.batik.bridge.AbstractGraphicsNodeBridge;
import org.apache.batik.bridge.Bridge;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.BridgeException;
import org.apache.batik.bridge.ErrorConstants;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.SVGPathElementBridge;
import org.apache.batik.bridge.UserAgent;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.ShapeNode;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Batik's state for one drawing of a document. A text or an image becomes an empty node that carries its transform;
 * path data is read by our own parser. */
final class DrawingContext extends BridgeContext {
    DrawingContext(UserAgent agent, GVTBuilder builder) {
        super(agent, null, new NoLoader());
        setGVTBuilder(builder);
    }

    /** Makes a document ready to be built; its styles are not computed yet. */
    void prepare(Document document) {
        setDocument(document);
        initializeDocument(document);
    }

    @Override
    public void registerSVGBridges() {
        super.registerSVGBridges();
        putBridge(new EmptyBridge("text"));
        putBridge(new EmptyBridge("image"));
        putBridge(new PathBridge());
    }

    private static final class EmptyBridge extends AbstractGraphicsNodeBridge {
        private final String name;

        EmptyBridge(String name) {
            this.name = name;
        }

        @Override
        public String getLocalName() {
            return name;
        }

        @Override
        public Bridge getInstance() {
            return new EmptyBridge(name);
        }

        @Override
        protected GraphicsNode instantiateGraphicsNode() {
            return new CompositeGraphicsNode();
        }

        @Override
        public boolean isComposite() {
            return false;
        }
    }

    /** Reads path data by {@link PathData}; a path without any draws nothing. */
    private static final class PathBridge extends SVGPathElementBridge {
        @Override
        public Bridge getInstance() {
            return new PathBridge();
        }

        @Override
        protected void buildShape(BridgeContext context, Element element, ShapeNode node) {
            String d = element.getAttribute("d");
            try {
                node.setShape(PathData.parse(d).toShape(FillRule.NON_ZERO));
            } catch (IllegalArgumentException e) {
                throw new BridgeException(
                        context, element, e, ErrorConstants.ERR_ATTRIBUTE_VALUE_MALFORMED, new Object[] {"d", d});
            }
        }
    }
}
