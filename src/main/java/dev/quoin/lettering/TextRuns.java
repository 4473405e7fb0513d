package dev.quoin.lettering;

import java.text.Bidi;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A line of text, cut into parts of one font and one direction.
 *
 * @param line the text in form NFC, to which all indices refer
 * @param graphemes the same, cut into graphemes
 * @param parts in the order of the text
 * @param missing the code points that no font has
 */
record TextRuns(String line, List<String> graphemes, List<TextPart> parts, Set<Integer> missing) {
    static TextRuns of(String text, FontSet fonts) {
        String line = plain(text, fonts);
        List<String> graphemes = Characters.graphemes(line);
        byte[] levels = levels(line);
        List<TextPart> parts = new ArrayList<>();
        Set<Integer> missing = new LinkedHashSet<>();
        int at = 0;
        for (String grapheme : graphemes) {
            Optional<Typeface> covering = covering(grapheme, fonts);
            if (covering.isEmpty()) {
                missing.addAll(lacking(grapheme, fonts));
            }
            append(parts, new TextPart(at, at + grapheme.length(), levels[at], covering.orElse(fonts.first())));
            at += grapheme.length();
        }
        return new TextRuns(line, graphemes, parts, missing);
    }

    /** The parts from left to right. */
    List<TextPart> inVisualOrder() {
        if (parts.isEmpty()) {
            return parts;
        }
        byte[] levels = new byte[parts.size()];
        for (int i = 0; i < levels.length; i++) {
            levels[i] = parts.get(i).level();
        }
        TextPart[] ordered = parts.toArray(TextPart[]::new);
        Bidi.reorderVisually(levels, 0, ordered, 0, ordered.length);
        return List.of(ordered);
    }

    /** For each character of the line the number of its grapheme. */
    int[] graphemeOfEach() {
        int[] numbers = new int[line.length()];
        int at = 0;
        for (int i = 0; i < graphemes.size(); i++) {
            int end = at + graphemes.get(i).length();
            Arrays.fill(numbers, at, end, i);
            at = end;
        }
        return numbers;
    }

    /** The first code points of the visible graphemes none of whose characters is among the inked ones. */
    List<Integer> without(BitSet inked) {
        List<Integer> lost = new ArrayList<>();
        int at = 0;
        for (String grapheme : graphemes) {
            int end = at + grapheme.length();
            int ink = inked.nextSetBit(at);
            boolean drawn = ink >= 0 && ink < end;
            if (!drawn) {
                grapheme.codePoints().filter(Characters::showsInk).limit(1).forEach(lost::add);
            }
            at = end;
        }
        return lost;
    }

    private static void append(List<TextPart> parts, TextPart part) {
        int last = parts.size() - 1;
        if (last >= 0 && parts.get(last).continues(part)) {
            parts.set(last, parts.get(last).upTo(part.end()));
        } else {
            parts.add(part);
        }
    }

    /** NFC; white space, and spaces that no font has, as plain spaces. */
    private static String plain(String text, FontSet fonts) {
        StringBuilder line = new StringBuilder(Normalizer.normalize(text, Normalizer.Form.NFC));
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            boolean white = c == '\t' || c == '\n' || c == '\r';
            if (white
                    || (c != ' '
                            && Characters.isSpace(c)
                            && covering(String.valueOf(c), fonts).isEmpty())) {
                line.setCharAt(i, ' ');
            }
        }
        return line.toString();
    }

    private static Optional<Typeface> covering(String grapheme, FontSet fonts) {
        for (FontFace face : fonts.faces()) {
            if (face.typeface().covers(grapheme)) {
                return Optional.of(face.typeface());
            }
        }
        return Optional.empty();
    }

    /** The characters of a grapheme that no font has; the last, if each stands in some font but not all in one. */
    private static List<Integer> lacking(String grapheme, FontSet fonts) {
        List<Integer> lacking = grapheme.codePoints()
                .filter(c -> covering(Character.toString(c), fonts).isEmpty())
                .boxed()
                .toList();
        return lacking.isEmpty() ? List.of(grapheme.codePointBefore(grapheme.length())) : lacking;
    }

    private static byte[] levels(String line) {
        byte[] levels = new byte[line.length()];
        if (Bidi.requiresBidi(line.toCharArray(), 0, line.length())) {
            Bidi bidi = new Bidi(line, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
            for (int i = 0; i < levels.length; i++) {
                levels[i] = (byte) bidi.getLevelAt(i);
            }
        }
        return levels;
    }
}
