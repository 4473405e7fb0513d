package dev.quoin.art;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Path;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.DocumentLoader;
import org.apache.batik.bridge.FontFace;
import org.apache.batik.bridge.FontFamilyResolver;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.TextNode;
import org.apache.batik.bridge.UserAgentAdapter;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.font.AWTFontFamily;
import org.apache.batik.gvt.font.GVTFontFace;
import org.apache.batik.gvt.font.GVTFontFamily;

/** The outlines of text as Batik 1.19 renders it, with one font for everything. */
final class BatikText extends UserAgentAdapter implements FontFamilyResolver {
    private final GVTFontFamily family;

    private BatikText(Font font) {
        this.family = new AWTFontFamily(new GVTFontFace(font.getFamily()), font);
    }

    /** The texts of a drawing, in the units of its viewBox moved and scaled as its page is. */
    static Path outline(String svg, String font) {
        try (InputStream file = BatikText.class.getResourceAsStream("/dev/quoin/lettering/fonts/" + font)) {
            BatikText agent = new BatikText(Font.createFont(Font.TRUETYPE_FONT, file));
            SAXSVGDocumentFactory factory = new SAXSVGDocumentFactory(null);
            var document = factory.createSVGDocument("file:///t.svg", new StringReader(svg));
            BridgeContext context = new BridgeContext(agent, new DocumentLoader(agent));
            Path.Builder all = Path.builder();
            collect(new GVTBuilder().build(context, document), new AffineTransform(), all);
            return all.build();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void collect(GraphicsNode node, AffineTransform above, Path.Builder all) {
        AffineTransform move = new AffineTransform(above);
        if (node.getTransform() != null) {
            move.concatenate(node.getTransform());
        }
        if (node instanceof TextNode text) {
            all.append(Path.of(text.getOutline())
                    .transform(new Affine(
                            move.getScaleX(),
                            move.getShearY(),
                            move.getShearX(),
                            move.getScaleY(),
                            move.getTranslateX(),
                            move.getTranslateY())));
        } else if (node instanceof CompositeGraphicsNode composite) {
            for (Object child : composite.getChildren()) {
                collect((GraphicsNode) child, move, all);
            }
        }
    }

    @Override
    public FontFamilyResolver getFontFamilyResolver() {
        return this;
    }

    @Override
    public GVTFontFamily resolve(String name) {
        return family;
    }

    @Override
    public GVTFontFamily resolve(String name, FontFace face) {
        return family;
    }

    @Override
    public GVTFontFamily loadFont(InputStream in, FontFace face) {
        return family;
    }

    @Override
    public GVTFontFamily getDefault() {
        return family;
    }

    @Override
    public GVTFontFamily getFamilyThatCanDisplay(char c) {
        return family;
    }
}
