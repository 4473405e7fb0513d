package dev.quoin.paper;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.util.XRLog;
import dev.quoin.lettering.FontLibrary;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageTree;
import org.apache.pdfbox.pdmodel.font.FontMappers;

/**
 * The pages of a paper as PDF. What is laid out are the same templates that make the HTML, a piece at a time, so that a long
 * paper is never in memory as a whole but for its finished pages. Nothing in it depends on the time or on chance: the same
 * pieces give the same bytes.
 */
final class PdfPages implements AutoCloseable {
    /** What a text may hold that no XML can. */
    private static final Pattern NOT_XML =
            Pattern.compile("[^\\t\\n\\r -\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]");

    static {
        XRLog.setLoggingEnabled(false);
        FontMappers.set(new NoSystemFonts());
    }

    private final PDDocument document = new PDDocument();
    private final String title;
    private final String style;
    private final PaperType normal;
    private final PaperType bold;
    private final PaperType mono;
    private final PaperType monoBold;
    private final PdfSketches sketches;
    private final StringWriter body = new StringWriter();

    /**
     * Begins a paper.
     *
     * @param title of the document
     * @param style the style sheet of the HTML
     * @param fonts those of the job, for what the paper's own do not have
     * @throws IOException if a bundled font cannot be read
     */
    PdfPages(String title, String style, FontLibrary fonts) throws IOException {
        this.title = title;
        this.style = style;
        this.normal = new PaperType(document, PaperType.SANS, PaperType.NORMAL, fonts);
        this.bold = new PaperType(document, PaperType.SANS, PaperType.BOLD, fonts);
        this.mono = new PaperType(document, PaperType.MONO, PaperType.NORMAL, fonts);
        this.monoBold = new PaperType(document, PaperType.MONO, PaperType.BOLD, fonts);
        this.sketches = new PdfSketches(document, normal, bold);
    }

    /** Lays a template out on pages of its own, after those that are there. */
    void add(String template, Map<String, Object> view) throws IOException {
        put(template, view);
        endPages();
    }

    /** Puts a template after what was put before, to be laid out together by {@link #endPages}. */
    void put(String template, Map<String, Object> view) throws IOException {
        Templates.write(template, view, body);
    }

    /** Lays out what was put; what comes then begins on a new page. */
    void endPages() throws IOException {
        StringWriter page = new StringWriter();
        Templates.write("pdf-page.ftlh", Map.of("title", title, "style", style, "body", body.toString()), page);
        body.getBuffer().setLength(0);
        layOut(NOT_XML.matcher(page.toString()).replaceAll("\uFFFD"));
    }

    /** How many pages there are. */
    int count() {
        return document.getNumberOfPages();
    }

    /** Puts the last pages first, from a page on, counted from 0. */
    void putFirst(int from) {
        PDPageTree pages = document.getPages();
        for (int i = from; i > 0 && i < count(); i++) {
            PDPage page = pages.get(i);
            PDPage before = pages.get(i - from);
            pages.remove(page);
            pages.insertBefore(page, before);
        }
    }

    /** Writes the document; no page can be added after that. */
    void save(OutputStream out) throws IOException {
        PDDocumentInformation about = new PDDocumentInformation();
        about.setTitle(title);
        document.setDocumentInformation(about);
        // What the layout claims for the document, of its structure and its archiving, nobody has checked.
        document.getDocumentCatalog().getCOSObject().removeItem(COSName.METADATA);
        document.getDocumentCatalog().getCOSObject().removeItem(COSName.MARK_INFO);
        document.getDocumentCatalog().setLanguage("en");
        // Otherwise the file's identifier would be made from the clock.
        document.setDocumentId(0L);
        document.save(out);
    }

    @Override
    public void close() throws IOException {
        document.close();
    }

    private void layOut(String html) throws IOException {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFastMode();
        builder.usePDDocument(document);
        // Only then does it take the fonts given and no others, least of all this machine's.
        builder.usePdfAConformance(PdfAConformance.PDFA_2_B);
        builder.useSVGDrawer(sketches);
        builder.addDOMMutator(new PdfLettering(normal, bold));
        use(builder, normal, "paper", PaperType.NORMAL);
        use(builder, bold, "paper", PaperType.BOLD);
        use(builder, mono, "paper-mono", PaperType.NORMAL);
        use(builder, monoBold, "paper-mono", PaperType.BOLD);
        builder.withHtmlContent(html, null);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.createPDFWithoutClosing();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static void use(PdfRendererBuilder builder, PaperType type, String family, int weight) {
        builder.useFont(new PDFontSupplier(type.font()), family, weight, FontStyle.NORMAL, false);
    }
}
