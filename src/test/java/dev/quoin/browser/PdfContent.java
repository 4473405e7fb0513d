package dev.quoin.browser;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The operators of a PDF's first page (ISO 32000-1, 7.8), unpacked. */
public final class PdfContent {
    private PdfContent() {}

    /** They and their operands, one operator a line. */
    public static String of(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile());
                InputStream content = document.getPage(0).getContents()) {
            return new String(content.readAllBytes(), StandardCharsets.ISO_8859_1);
        }
    }
}
