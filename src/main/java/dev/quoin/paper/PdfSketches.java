package dev.quoin.paper;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import java.io.File;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Draws the pictures in a PDF paper, and remembers what has a name, since later pictures show it again. */
final class PdfSketches implements SVGDrawer {
    /** No piece is larger, mm. */
    private static final PDRectangle ANYWHERE = new PDRectangle(-5000, -5000, 10_000, 10_000);

    private final PDDocument document;
    private final PaperType normal;
    private final PaperType bold;
    private final Map<String, Element> named = new HashMap<>();
    private final Map<String, PDFormXObject> forms = new HashMap<>();

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

    PaperType type(boolean isBold) {
        return isBold ? bold : normal;
    }

    /** What has a name. */
    Element named(String id) {
        return Optional.ofNullable(named.get(id)).orElseThrow();
    }

    /** A drawing of what has a name, made once for each colour. */
    PDFormXObject form(Element element, SketchStyle style) throws IOException {
        String key = element.getAttribute("id") + " " + style.color();
        PDFormXObject known = forms.get(key);
        if (known == null) {
            PDAppearanceStream form = emptyForm(ANYWHERE);
            try (PDPageContentStream content = content(form)) {
                new SketchPainter(this, content).paintNow(element, style);
            }
            forms.put(key, form);
            known = form;
        }
        return known;
    }

    /** A form with nothing in it yet. */
    PDAppearanceStream emptyForm(PDRectangle box) {
        PDAppearanceStream form = new PDAppearanceStream(document);
        form.setBBox(box);
        form.setResources(new PDResources());
        return form;
    }

    /** What is drawn into a form. */
    PDPageContentStream content(PDAppearanceStream form) throws IOException {
        return new PDPageContentStream(
                document, form, form.getContentStream().createOutputStream(COSName.FLATE_DECODE));
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
        // Called after each piece of a paper; what was drawn in it may be shown again in a later one.
    }
}
