package dev.quoin.lettering;

import dev.quoin.geometry.Box;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The letters of a stroke font, from Hershey's data and our additions to it.
 *
 * <p>A line of a {@code .jhf} file is one glyph, the first the space, then in ASCII order: five characters of number, three
 * of count, then pairs of characters, each coordinate its distance from R, y down; the first pair is the left and right
 * edge, and the pair {@code " R"} lifts the pen.
 *
 * @param letters by code point
 * @param accents by combining code point
 */
record StrokeData(Map<Integer, StrokeGlyph> letters, Map<Integer, Accent> accents) {
    private static final String FOLDER = "/dev/quoin/lettering/strokes/";
    private static final int ORIGIN = 'R';
    private static final int BASELINE = 9;
    private static final int LAST = '~';

    /** Where an accent stands. */
    enum Side {
        ABOVE,
        BELOW,
        BESIDE
    }

    /** An accent's place and strokes. */
    record Accent(Side side, List<double[]> strokes) {}

    /**
     * Reads a font.
     *
     * @param plain whether the letters that we drew without serifs go with it
     */
    static StrokeData read(String file, boolean plain) throws IOException {
        StrokeData data = new StrokeData(new HashMap<>(), new HashMap<>());
        int codePoint = ' ';
        for (String line : text(file).lines().toList()) {
            if (codePoint <= LAST) {
                data.letters.put(codePoint++, glyph(line.substring(8)));
            }
        }
        for (String line : text("additions.txt").lines().toList()) {
            data.addition(line.split(" ", 4), plain);
        }
        return data;
    }

    private void addition(String[] words, boolean plain) {
        int codePoint = words[0].equals("#") ? 0 : Integer.parseInt(words[1], 16);
        switch (words[0]) {
            case "letter" -> {
                double half = Double.parseDouble(words[2]);
                if (plain) {
                    letters.put(codePoint, new StrokeGlyph(-half, half, strokes(words[3])));
                }
            }
            case "accent" ->
                accents.put(
                        codePoint,
                        new Accent(Side.valueOf(words[2].toUpperCase(java.util.Locale.ROOT)), strokes(words[3])));
            case "bar" -> letters.put(codePoint, barred(letters.get((int) words[2].charAt(0)), words[3]));
            default -> {
                // A remark.
            }
        }
    }

    private static StrokeGlyph barred(StrokeGlyph letter, String ends) {
        Box ink = letter.ink();
        double[] bar = strokes(ends).get(0);
        for (int i = 0; i < bar.length; i += 2) {
            bar[i] = ink.minX() + bar[i] * ink.width();
            bar[i + 1] = ink.minY() + bar[i + 1] * ink.height();
        }
        return letter.with(List.of(bar));
    }

    private static List<double[]> strokes(String text) {
        List<double[]> strokes = new ArrayList<>();
        for (String stroke : text.split("; ")) {
            strokes.add(java.util.Arrays.stream(stroke.split("[ ,]"))
                    .mapToDouble(Double::parseDouble)
                    .toArray());
        }
        return strokes;
    }

    private static StrokeGlyph glyph(String pairs) {
        List<double[]> strokes = new ArrayList<>();
        for (String stroke : pairs.substring(2).split(" R", -1)) {
            double[] xy = new double[stroke.length()];
            for (int i = 0; i + 1 < stroke.length(); i += 2) {
                xy[i] = stroke.charAt(i) - ORIGIN;
                xy[i + 1] = BASELINE - (stroke.charAt(i + 1) - ORIGIN);
            }
            if (xy.length > 0) {
                strokes.add(xy);
            }
        }
        return new StrokeGlyph(pairs.charAt(0) - ORIGIN, pairs.charAt(1) - ORIGIN, strokes);
    }

    private static String text(String file) throws IOException {
        return new String(BundledFonts.read(FOLDER + file), StandardCharsets.UTF_8);
    }
}
