package dev.quoin.lettering;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import dev.quoin.lettering.StrokeData.Accent;
import dev.quoin.lettering.StrokeData.Side;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * A font of single strokes, quick to follow and never to be filled. Letters with accents are put together from their
 * canonical decomposition (NFD): accents stack outwards from the letter's ink, an i or j under an accent loses its dot.
 */
final class StrokeTypeface implements Typeface {
    /** Between a letter and its accent, grid units. */
    private static final double GAP = 2;

    private static final double SMALL_LETTERS_TOP = 15;
    private static final int CARON = 0x30C;
    private static final int STROKE_FOR_CARON = 0x2019;
    private static final String TALL = "dtlL";

    /** Marks of print that engravers write as the plain ones. */
    private static final Map<Integer, Integer> WRITTEN_AS =
            Map.of(0x2018, (int) '\'', 0x2019, (int) '\'', 0x2010, (int) '-', 0x2011, (int) '-', 0x2013, (int) '-');

    private final Supplier<StrokeData> reader;
    private final Map<String, Optional<StrokeGlyph>> known = new ConcurrentHashMap<>();
    private StrokeData data;

    StrokeTypeface(Supplier<StrokeData> reader) {
        this.reader = reader;
    }

    @Override
    public boolean covers(String grapheme) {
        return glyph(grapheme).isPresent();
    }

    @Override
    public double capHeight() {
        return StrokeGlyph.CAP_HEIGHT / StrokeGlyph.EM;
    }

    @Override
    public boolean strokes() {
        return true;
    }

    @Override
    public GlyphRun set(char[] text, int start, int end, boolean rightToLeft) {
        List<GlyphRun.Glyph> glyphs = new ArrayList<>();
        double pen = 0;
        int at = start;
        for (String grapheme : Characters.graphemes(new String(text, start, end - start))) {
            Optional<StrokeGlyph> glyph = glyph(grapheme);
            Path path = glyph.map(StrokeGlyph::path).orElse(Path.EMPTY);
            glyphs.add(new GlyphRun.Glyph(path, path.bounds(), pen, 0, at, glyph.isEmpty()));
            pen += glyph.map(StrokeGlyph::advance).orElse(0.0);
            at += grapheme.length();
        }
        return new GlyphRun(glyphs, pen);
    }

    private Optional<StrokeGlyph> glyph(String grapheme) {
        Optional<StrokeGlyph> found = known.get(grapheme);
        if (found == null) {
            found = composed(grapheme);
            // What is missing ends the job, and need not be remembered: only letters that exist fill the cache.
            if (found.isPresent()) {
                known.put(grapheme, found);
            }
        }
        return found;
    }

    private Optional<StrokeGlyph> composed(String grapheme) {
        int[] parts = Normalizer.normalize(grapheme, Normalizer.Form.NFD)
                .codePoints()
                .filter(c -> !Characters.isIgnorable(c))
                .toArray();
        if (parts.length == 0) {
            return Optional.of(new StrokeGlyph(0, 0, List.of()));
        }
        int base = WRITTEN_AS.getOrDefault(parts[0], parts[0]);
        boolean dotless = base == 0x131 || (parts.length > 1 && (base == 'i' || base == 'j') && isAbove(parts[1]));
        StrokeGlyph letter = data().letters().get(base == 0x131 ? 'i' : base);
        if (letter == null) {
            return Optional.empty();
        }
        StrokeGlyph glyph = dotless ? letter.below(SMALL_LETTERS_TOP) : letter;
        for (int i = 1; i < parts.length; i++) {
            boolean stroke = parts[i] == CARON && TALL.indexOf(base) >= 0;
            Accent accent = data().accents().get(stroke ? STROKE_FOR_CARON : parts[i]);
            if (accent == null) {
                return Optional.empty();
            }
            glyph = accented(glyph, accent);
        }
        return Optional.of(glyph);
    }

    private boolean isAbove(int mark) {
        Accent accent = data().accents().get(mark);
        return accent != null && accent.side() == Side.ABOVE;
    }

    private static StrokeGlyph accented(StrokeGlyph letter, Accent accent) {
        Box ink = letter.ink();
        double middle = ink.centre().x();
        return letter.with(
                switch (accent.side()) {
                    case ABOVE -> StrokeGlyph.moved(accent.strokes(), middle, ink.maxY() + GAP);
                    case BELOW -> StrokeGlyph.moved(accent.strokes(), middle, ink.minY() - GAP);
                    case BESIDE -> StrokeGlyph.moved(accent.strokes(), ink.maxX(), ink.maxY());
                });
    }

    private synchronized StrokeData data() {
        if (data == null) {
            data = reader.get();
        }
        return data;
    }
}
