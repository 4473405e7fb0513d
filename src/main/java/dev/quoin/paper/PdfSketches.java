package dev.quoin.paper;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import java.io.File;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Draws the pictures in a PDF paper, and remembers what has a name, since later pictures show it again. */
final class PdfSketches implements SVGDrawer {
    private final PDDocument document;
    private final PaperType normal;
    private final PaperType bold;
    private final Map<String, Element> named = new HashMap<>();

    PdfSketches(PDDocument document, PaperType normal, PaperType bold) {
        this.document = document;
        this.normal = normal;
        this.bold = bold;
    }

    @Override
    public SVGImage buildSVGImage(
            Element svg, Box box, CssContext css, double cssWidth, double cssHeight, double dotsPerPixel) {
        remember(svg);
        PdfSketch.Size width = new PdfSketch.Size(svg.getAttribute("width"), cssWidth, dotsPerPixel);
        PdfSketch.Size height = new PdfSketch.Size(svg.getAttribute("height"), cssHeight, dotsPerPixel);
        return new PdfSketch(this, svg, width.dots(), height.dots());
    }

    PDDocument document() {
        return document;
    }

    PaperType type(boolean isBold) {
        return isBold ? bold : normal;
    }

    /** What was drawn before under a name. */
    Optional<Element> named(String id) {
        return Optional.ofNullable(named.get(id));
    }

    private void remember(Element element) {
        if (element.hasAttribute("id")) {
            named.put(element.getAttribute("id"), element);
        }
        for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element child) {
                remember(child);
            }
        }
    }

    @Override
    public void importFontFaceRules(List<FontFaceRule> rules, SharedContext context) {
        // Papers bring no fonts of their own.
    }

    @Override
    public void addFontFile(File file, String family, Integer weight, FontStyle style) {
        // The type of the paper is used.
    }

    @Override
    public void close() {
        named.clear();
    }
}
