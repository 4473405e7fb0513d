package dev.quoin.drawing;

import org.apache.batik.bridge.AbstractGraphicsNodeBridge;
import org.apache.batik.bridge.Bridge;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.UserAgent;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.w3c.dom.Document;

/** Batik's state for one drawing of a document. A text becomes an empty node that carries its transform. */
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
        putBridge(new TextBridge());
    }

    private static final class TextBridge extends AbstractGraphicsNodeBridge {
        @Override
        public String getLocalName() {
            return "text";
        }

        @Override
        public Bridge getInstance() {
            return new TextBridge();
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
}
