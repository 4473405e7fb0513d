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
import java.text.AttributedCharacterIterator;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
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
import org.apache.batik.gvt.font.AWTGVTFont;
import org.apache.batik.gvt.font.GVTFont;
import org.apache.batik.gvt.font.GVTFontFace;
import org.apache.batik.gvt.font.GVTFontFamily;

/** The outlines of text as Batik 1.19 renders it. A font family is named by a resource, or is the one font of all. */
final class BatikText extends UserAgentAdapter implements FontFamilyResolver {
    private static final String FONTS = "/dev/quoin/lettering/fonts/";
    private static final Map<String, Font> OPEN = new ConcurrentHashMap<>();

    private final String font;

    private BatikText(String font) {
        this.font = font;
    }

    /** The texts of a drawing, in the units of its viewBox moved and scaled as its page is; all in one bundled font. */
    static Path outline(String svg, String font) {
        BatikText agent = new BatikText(FONTS + font);
        SAXSVGDocumentFactory factory = new SAXSVGDocumentFactory(null);
        try {
            var document = factory.createSVGDocument("file:///t.svg", new StringReader(svg));
            BridgeContext context = new BridgeContext(agent, new DocumentLoader(agent));
            Path.Builder all = Path.builder();
            collect(new GVTBuilder().build(context, document), new AffineTransform(), all);
            return all.build();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A font on the class path. */
    static Font font(String resource) {
        return OPEN.computeIfAbsent(resource, BatikText::open);
    }

    private static Font open(String resource) {
        try (InputStream file = BatikText.class.getResourceAsStream(resource)) {
            return Font.createFont(Font.TRUETYPE_FONT, file);
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

    /**
     * Batik takes all outlines at 48 pixels an em, where the platform rounds them to a 64th of a pixel: 3 micrometres in
     * letters of 10 mm. This font stays as fine as it was made.
     */
    private static final class FineFont extends Font {
        private static final long serialVersionUID = 1L;
        private static final float PIXELS = 4800;

        FineFont(Font font) {
            super(font.deriveFont(PIXELS));
        }

        @Override
        public Font deriveFont(float size) {
            return this;
        }
    }

    private static final class FineFamily extends AWTFontFamily {
        private final FineFont fine;

        FineFamily(String name, Font font) {
            super(new GVTFontFace(name), font);
            this.fine = new FineFont(font);
        }

        @Override
        public GVTFont deriveFont(float size, AttributedCharacterIterator text) {
            return new AWTGVTFont(fine, size / FineFont.PIXELS);
        }

        @Override
        @SuppressWarnings("rawtypes") // As Batik declares it.
        public GVTFont deriveFont(float size, Map attributes) {
            return new AWTGVTFont(fine, size / FineFont.PIXELS);
        }
    }

    @Override
    public FontFamilyResolver getFontFamilyResolver() {
        return this;
    }

    @Override
    public GVTFontFamily resolve(String name) {
        return new FineFamily(name, font(name.startsWith("/") ? name : font));
    }

    @Override
    public GVTFontFamily resolve(String name, FontFace face) {
        return resolve(name);
    }

    @Override
    public GVTFontFamily loadFont(InputStream in, FontFace face) {
        return getDefault();
    }

    @Override
    public GVTFontFamily getDefault() {
        return resolve("");
    }

    @Override
    public GVTFontFamily getFamilyThatCanDisplay(char c) {
        return getDefault();
    }
}
