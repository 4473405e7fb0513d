package dev.quoin.paper;

import dev.quoin.lettering.FontLibrary;
import dev.quoin.lettering.FontSet;
import dev.quoin.lettering.MissingCharacters;
import dev.quoin.lettering.Typeset;
import dev.quoin.lettering.TypesetText;
import dev.quoin.lettering.Typesetter;
import java.io.IOException;
import java.lang.Character.UnicodeScript;
import java.util.EnumSet;
import java.util.Set;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The type of a PDF paper, in one weight. Scripts whose letters stand side by side are set in DejaVu Sans as text; all
 * others are drawn as outlines, shaped and ordered as they are on the pieces, in the first of the job's fonts that has them.
 */
final class PaperType {
    static final String SANS = "DejaVu Sans";
    static final String MONO = "DejaVu Sans Mono";
    static final int NORMAL = 400;
    static final int BOLD = 700;

    private static final Set<UnicodeScript> PLAIN =
            EnumSet.of(UnicodeScript.COMMON, UnicodeScript.LATIN, UnicodeScript.GREEK, UnicodeScript.CYRILLIC);
    /** Stands for a character that no font has. */
    private static final String LACKING = "\u25A1";

    private final PDFont font;
    private final CmapLookup glyphs;
    private final FontSet fonts;
    private final Typesetter typesetter = new Typesetter();

    PaperType(PDDocument document, String family, int weight, FontLibrary library) throws IOException {
        TrueTypeFont file = new TTFParser().parse(new RandomAccessReadBuffer(FontLibrary.bundled(family, weight)));
        document.registerTrueTypeFontForClosing(file);
        this.font = PDType0Font.load(document, file, true);
        this.glyphs = file.getUnicodeCmapLookup();
        this.fonts = library.forWriting(weight);
    }

    PDFont font() {
        return font;
    }

    /** Whether the PDF's own font sets all of it right, letter after letter. */
    boolean isPlain(String text) {
        return text.codePoints().allMatch(this::isPlain);
    }

    /** The length of a plain text, ems. */
    double advance(String text) {
        try {
            return font.getStringWidth(text) / 1000;
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** Any text as an outline; what no font has is shown as an empty box. */
    TypesetText outline(String text) {
        Typeset set = typesetter.set(text, fonts);
        if (set instanceof MissingCharacters missing) {
            String known = text.codePoints()
                    .mapToObj(c -> missing.codePoints().contains(c) ? LACKING : Character.toString(c))
                    .reduce("", String::concat);
            set = typesetter.set(known.equals(text) ? LACKING : known, fonts);
        }
        return set instanceof TypesetText done ? done : outline(LACKING);
    }

    private boolean isPlain(int character) {
        return PLAIN.contains(UnicodeScript.of(character))
                && (character == '\n' || character == '\t' || glyphs.getGlyphId(character) != 0);
    }
}
