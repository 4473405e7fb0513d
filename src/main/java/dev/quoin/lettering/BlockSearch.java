package dev.quoin.lettering;

import dev.quoin.geometry.Box;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds the ways to break a text into lines that are worth a trial. Ways for the first j pieces in k lines are built on
 * those for fewer pieces in k - 1 lines. For a rectangle, a way that is neither narrower nor lower nor higher than
 * another of the same pieces and lines is dropped, which cannot lose the best; for other shapes all are kept, as far as
 * {@link #MOST_KEPT}, the narrowest first. Each line is set in type once.
 */
final class BlockSearch {
    /** A text of ten words in four lines has 84 ways; one with more than this is no name. */
    static final int MOST_KEPT = 200;

    private static final Comparator<Way> NARROWEST = (one, other) -> Double.compare(one.width(), other.width());

    private final LineBreaker breaks;
    private final Typesetter typesetter;
    private final FontSet fonts;
    private final boolean rectangle;
    private final Map<String, Typeset> known = new HashMap<>();
    private final Set<Integer> missing = new LinkedHashSet<>();

    BlockSearch(LineBreaker breaks, Typesetter typesetter, FontSet fonts, boolean rectangle) {
        this.breaks = breaks;
        this.typesetter = typesetter;
        this.fonts = fonts;
        this.rectangle = rectangle;
    }

    /** The code points that no font has; if there are any, the blocks are of no use. */
    List<Integer> missing() {
        return List.copyOf(missing);
    }

    /** The blocks worth a trial, those of fewer lines first, then the narrower ones. */
    List<TextBlock> blocks(int mostLines) {
        List<TextBlock> blocks = new ArrayList<>();
        List<List<Way>> shorter = empty();
        shorter.get(0).add(Way.START);
        for (int lines = 0; lines < mostLines; lines++) {
            List<List<Way>> ways = longer(shorter, lines, lines + 1 == mostLines);
            ways.get(breaks.size()).forEach(way -> blocks.add(way.block()));
            shorter = ways;
        }
        return blocks;
    }

    /** The ways with one line more than {@code lines}. */
    private List<List<Way>> longer(List<List<Way>> shorter, int lines, boolean last) {
        List<List<Way>> ways = empty();
        // The last line ends where the text ends; what ends before needs no look.
        for (int to = last ? breaks.size() : lines + 1; to <= breaks.size(); to++) {
            List<Way> found = new ArrayList<>();
            for (int from = to - 1; from >= lines && breaks.mayJoin(from, to); from--) {
                if (!shorter.get(from).isEmpty()) {
                    TypesetText line = set(from, to);
                    String text = breaks.line(from, to);
                    shorter.get(from).forEach(way -> found.add(way.with(text, line)));
                }
            }
            ways.set(to, worthKeeping(found));
        }
        return ways;
    }

    private List<Way> worthKeeping(List<Way> found) {
        List<Way> kept = new ArrayList<>();
        found.sort(NARROWEST);
        for (Way way : found) {
            if (rectangle ? kept.stream().noneMatch(better -> better.covers(way)) : kept.size() < MOST_KEPT) {
                kept.add(way);
            }
        }
        return kept;
    }

    private TypesetText set(int from, int to) {
        Typeset typeset = known.computeIfAbsent(breaks.line(from, to), line -> typesetter.set(line, fonts));
        if (typeset instanceof MissingCharacters lacking) {
            missing.addAll(lacking.codePoints());
            return TypesetText.NOTHING;
        }
        return (TypesetText) typeset;
    }

    private List<List<Way>> empty() {
        List<List<Way>> ways = new ArrayList<>();
        for (int i = 0; i <= breaks.size(); i++) {
            ways.add(new ArrayList<>());
        }
        return ways;
    }

    /**
     * One way to break the first pieces of the text.
     *
     * @param width of the widest line's ink, ems
     * @param top of the ink above the first baseline, ems
     * @param bottom of the ink, below zero under the first baseline, ems
     */
    private record Way(double width, double top, double bottom, List<String> texts, List<TypesetText> lines) {
        static final Way START = new Way(0, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, List.of(), List.of());

        Way with(String text, TypesetText line) {
            Box ink = line.ink();
            double baseline = -lines.size() * TextBlock.LEADING;
            return new Way(
                    Math.max(width, ink.width()),
                    Math.max(top, baseline + ink.maxY()),
                    Math.min(bottom, baseline + ink.minY()),
                    appended(texts, text),
                    appended(lines, line));
        }

        /** Whether it fits wherever the other one fits. */
        boolean covers(Way other) {
            return width <= other.width && top <= other.top && bottom >= other.bottom;
        }

        TextBlock block() {
            return new TextBlock(texts, lines);
        }

        private static <T> List<T> appended(List<T> list, T last) {
            List<T> longer = new ArrayList<>(list);
            longer.add(last);
            return List.copyOf(longer);
        }
    }
}
