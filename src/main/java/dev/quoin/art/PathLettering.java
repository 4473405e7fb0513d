package dev.quoin.art;

import dev.quoin.drawing.Element;
import dev.quoin.drawing.TextAnchor;
import dev.quoin.geometry.Decimals;
import dev.quoin.lettering.GlyphLine;
import dev.quoin.lettering.MissingCharacters;
import dev.quoin.lettering.SetLine;
import dev.quoin.lettering.TextTrack;
import dev.quoin.lettering.Typesetter;
import java.util.List;
import java.util.Optional;

/**
 * A text along a path.
 *
 * @param track the path, in the text's frame
 * @param start how far along it the text is anchored, mm
 * @param fit the sizes that it may have; as drawn if empty
 */
record PathLettering(
        List<LineRun> runs,
        TextTrack track,
        double start,
        TextAnchor anchor,
        Optional<PathFit> fit,
        Typesetter typesetter)
        implements Lettering {
    /**
     * How a text is sized to its path. Lengths in mm.
     *
     * @param leastCapHeight the least height of capitals
     * @param greatestCapHeight the greatest
     * @param inset how far the text keeps from either end of its room
     * @param leastSqueeze how narrow letters may be made, as a factor of their width
     */
    record PathFit(double leastCapHeight, double greatestCapHeight, double inset, double leastSqueeze) {}

    @Override
    public Optional<Lettered> set(Merging row, Element element) {
        GlyphLine line = new GlyphLine(List.of(), 0, 0);
        StringBuilder said = new StringBuilder();
        for (LineRun run : runs) {
            Optional<String> text = row.text(run.text(), element);
            if (text.isEmpty()) {
                return Optional.empty();
            }
            row.joinLines(run.text(), text.get());
            String trimmed = runs.size() == 1 ? text.get().strip() : text.get();
            SetLine set = typesetter.letters(trimmed, run.fonts());
            if (set instanceof MissingCharacters missing) {
                row.error(run.text(), element, missing.message(), missing.remedy());
                return Optional.empty();
            }
            line = line.followedBy(((GlyphLine) set).times(run.size()));
            said.append(trimmed);
        }
        return fit.isPresent()
                ? fitted(line, said.toString(), fit.get(), row, element)
                : placed(line, said.toString(), row, element);
    }

    @Override
    public TextSource source() {
        return runs.stream()
                .map(LineRun::text)
                .filter(text -> !text.columns().isEmpty())
                .findFirst()
                .orElse(runs.get(0).text());
    }

    @Override
    public boolean strokes() {
        return runs.stream().anyMatch(run -> run.fonts().strokes());
    }

    private Optional<Lettered> placed(GlyphLine line, String said, Merging row, Element element) {
        if (!track.holds(line, start, anchor)) {
            row.error(
                    source(),
                    element,
                    "'" + said + "' is longer than its path: " + Decimals.text(line.advance(), 1) + " mm on "
                            + Decimals.text(track.room(start, anchor), 1) + " mm",
                    "shorten it, make it smaller, or let data-min-height and data-max-height size it");
            return Optional.empty();
        }
        return Optional.of(
                new Lettered(track.lay(line, 1, start, anchor), new MarkedText(said, line.capHeight(), false, 1)));
    }

    /** The largest size at which the line's advance is no longer than its room; squeezed only below the least size. */
    private Optional<Lettered> fitted(GlyphLine line, String said, PathFit sizes, Merging row, Element element) {
        double room = Math.max(0, track.room(start, anchor) - 2 * sizes.inset());
        double least = sizes.leastCapHeight() / line.capHeight();
        double most = sizes.greatestCapHeight() / line.capHeight();
        double longest = line.advance() > 0 ? room / line.advance() : most;
        double scale = Math.max(least, Math.min(most, longest));
        double squeeze = Math.min(1, longest / scale);
        if (squeeze < sizes.leastSqueeze() - 1e-9) {
            row.error(
                    source(),
                    element,
                    "'" + said + "' is too long for its path: capitals would be "
                            + Decimals.text(longest / sizes.leastSqueeze() * line.capHeight(), 2) + " mm high, and "
                            + Decimals.text(sizes.leastCapHeight(), 2) + " mm is the least",
                    "shorten it");
            return Optional.empty();
        }
        GlyphLine sized = line.times(scale);
        return Optional.of(new Lettered(
                track.lay(sized, squeeze, start, anchor), new MarkedText(said, sized.capHeight(), false, squeeze)));
    }
}
