package dev.quoin.paper;

import dev.quoin.lettering.FontLibrary;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * Gives a bundled font for whatever font PDFBox asks for by name. The layout prepares fonts that our papers never use; for
 * these PDFBox would look through all fonts of the machine, say so, and keep a list in the user's home. It is not told that
 * this is a makeshift, which it would say for each page.
 */
final class NoSystemFonts implements FontMapper {
    private final TrueTypeFont font;

    /** @throws UncheckedIOException if the bundled font cannot be read */
    NoSystemFonts() {
        try {
            byte[] file = FontLibrary.bundled(PaperType.SANS, PaperType.NORMAL);
            font = new TTFParser().parse(new RandomAccessReadBuffer(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String name, PDFontDescriptor descriptor) {
        return new FontMapping<>(font, false);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, PDFontDescriptor descriptor) {
        return new FontMapping<>(font, false);
    }

    @Override
    public CIDFontMapping getCIDFont(String name, PDFontDescriptor descriptor, PDCIDSystemInfo info) {
        return new CIDFontMapping(null, font, false);
    }
}
