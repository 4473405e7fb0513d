package dev.quoin.lettering;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.font.TextAttribute;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.file.FileSystemException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A font of outlines, shaped by the platform's HarfBuzz with kerning and ligatures on. It is laid out at as many units
 * as its design grid has in an em, and scaled down, since the platform rounds coordinates to 1/64 of a unit.
 */
final class OutlineTypeface implements Typeface {
    /** Bounds the cache of outlines; a large Chinese font has more glyphs than an order uses. */
    private static final int MOST_CACHED = 20_000;

    private final Opener opener;
    private final TableReader tables;
    private final Map<Integer, Drawn> outlines = new ConcurrentHashMap<>();
    private OpenFont opened;
    private volatile boolean used;

    @SuppressWarnings("OptionalAssignedToNull") // Not asked for yet.
    private volatile Optional<PlainFont> shaped;

    @SuppressWarnings("OptionalAssignedToNull") // Not asked for yet.
    private volatile Optional<PlainTable> table;

    OutlineTypeface(Opener opener) {
        this(opener, Optional::empty);
    }

    /**
     * A font that may have a table.
     *
     * @param tables gives it
     */
    OutlineTypeface(Opener opener, TableReader tables) {
        this.opener = opener;
        this.tables = tables;
    }

    @Override
    public boolean covers(String grapheme) {
        return displays(grapheme) || displays(Normalizer.normalize(grapheme, Normalizer.Form.NFD));
    }

    @Override
    public double capHeight() {
        Optional<PlainTable> known = table();
        return known.isPresent() ? known.get().capHeight() : font().capHeight();
    }

    @Override
    public boolean strokes() {
        return false;
    }

    @Override
    public GlyphRun set(char[] text, int start, int end, boolean rightToLeft) {
        OpenFont font = font();
        used = true;
        int direction = rightToLeft ? Font.LAYOUT_RIGHT_TO_LEFT : Font.LAYOUT_LEFT_TO_RIGHT;
        GlyphVector laidOut = font.font().layoutGlyphVector(OpenFont.UNHINTED, text, start, end, direction);
        double em = 1.0 / font.units();
        int count = laidOut.getNumGlyphs();
        List<GlyphRun.Glyph> glyphs = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            int code = laidOut.getGlyphCode(i);
            Point2D at = laidOut.getGlyphPosition(i);
            // The platform counts characters from the start of the run.
            int index = start + laidOut.getGlyphCharIndex(i);
            Drawn drawn = drawn(code);
            glyphs.add(new GlyphRun.Glyph(
                    drawn.outline, drawn.ink, at.getX() * em, -at.getY() * em, index, code == font.missingGlyph()));
        }
        return new GlyphRun(glyphs, laidOut.getGlyphPosition(count).getX() * em);
    }

    /**
     * Sets a text of plain characters from what is known of its pairs: the same glyphs at the same places, to the last
     * digit, as {@link #set} gives. Empty where the shaper must be asked.
     */
    Optional<GlyphRun> setPlain(String text) {
        Optional<PlainTable> known = table();
        Optional<? extends PlainFont> font = known.isPresent() && PlainTable.covers(text) ? known : shaped();
        Optional<GlyphRun> run = font.isPresent() ? PlainSetter.set(text, font.get()) : Optional.empty();
        if (run.isPresent()) {
            used = true;
        }
        return run;
    }

    /** The font's table, read when first asked for. */
    private Optional<PlainTable> table() {
        Optional<PlainTable> known = table;
        if (known == null) {
            try {
                known = tables.read();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            table = known;
        }
        return known;
    }

    /** Asks the shaper for what a table would tell. */
    Optional<PlainFont> shaped() {
        Optional<PlainFont> known = shaped;
        if (known == null) {
            known = ShapedPlainFont.of(font(), this::drawn);
            shaped = known;
        }
        return known;
    }

    /** Whether a text was set in it. */
    boolean isUsed() {
        return used;
    }

    /** What is wrong with its file, for a person; empty if it opens. */
    Optional<String> trouble() {
        try {
            font();
            return Optional.empty();
        } catch (UncheckedIOException e) {
            IOException cause = e.getCause();
            boolean said = cause instanceof FileSystemException file && file.getReason() != null;
            return Optional.of(said ? ((FileSystemException) cause).getReason() : "could not be read");
        }
    }

    private boolean displays(String grapheme) {
        Font font = font().font();
        return grapheme.codePoints().allMatch(c -> c == ' ' || Characters.isIgnorable(c) || font.canDisplay(c));
    }

    private Drawn drawn(int code) {
        Drawn known = outlines.get(code);
        if (known != null) {
            return known;
        }
        if (outlines.size() >= MOST_CACHED) {
            outlines.clear();
        }
        OpenFont font = font();
        double em = 1.0 / font.units();
        Path outline = Path.of(font.font()
                        .createGlyphVector(OpenFont.UNHINTED, new int[] {code})
                        .getGlyphOutline(0))
                .transform(Affine.scale(em, -em));
        Drawn drawn = new Drawn(outline, outline.bounds());
        outlines.put(code, drawn);
        return drawn;
    }

    private synchronized OpenFont font() {
        if (opened == null) {
            try {
                opened = opener.open();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return opened;
    }

    /** Opens a font's file. */
    interface Opener {
        OpenFont open() throws IOException;
    }

    /** Reads what was written down of a font's plain letters, if anything was. */
    interface TableReader {
        Optional<PlainTable> read() throws IOException;
    }

    /** A glyph's outline, and the tight box around it, ems. */
    record Drawn(Path outline, Box ink) {}

    /**
     * An opened font, ready to lay out.
     *
     * @param font the platform's font at a size of {@code units}
     * @param units the size at which it is laid out, in units of its design grid
     * @param capHeight ems
     * @param missingGlyph the code of the glyph that stands for what the font lacks
     * @param layout the tables of its rules; empty where they are not known
     */
    record OpenFont(
            Font font, int units, double capHeight, int missingGlyph, Optional<Map<String, ByteBuffer>> layout) {
        static final FontRenderContext UNHINTED = new FontRenderContext(null, true, true);

        /** Where neither the file nor its letters say how tall capitals are. Common practice. */
        private static final double USUAL_CAP_HEIGHT = 0.7;

        /** Makes a platform font ready; {@code capHeight} 0 means that the letter H is measured. */
        static OpenFont of(Font plain, int units, double capHeight) {
            Font font = plain.deriveFont(Map.of(
                    TextAttribute.SIZE, (float) units,
                    TextAttribute.KERNING, TextAttribute.KERNING_ON,
                    TextAttribute.LIGATURES, TextAttribute.LIGATURES_ON));
            double height = capHeight > 0 ? capHeight : measured(font) / units;
            return new OpenFont(font, units, height, font.getMissingGlyphCode(), Optional.empty());
        }

        OpenFont withLayout(Optional<Map<String, ByteBuffer>> tables) {
            return new OpenFont(font, units, capHeight, missingGlyph, tables);
        }

        private static double measured(Font font) {
            double height = font.canDisplay('H')
                    ? font.createGlyphVector(UNHINTED, "H")
                            .getOutline()
                            .getBounds2D()
                            .getHeight()
                    : 0;
            return height > 0 ? height : USUAL_CAP_HEIGHT * font.getSize2D();
        }
    }
}
