package dev.quoin.paper;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The words of a text, between which it may be broken.
 *
 * @param words there is at least one, which may be empty
 * @param widths of each, in sizes of the font
 */
record Words(List<String> words, double[] widths) {
    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final double SPACE = TextWidth.of(" ");

    static Words of(String text) {
        String[] words = SPACES.split(text.strip());
        return new Words(
                List.of(words), Arrays.stream(words).mapToDouble(TextWidth::of).toArray());
    }

    int count() {
        return words.size();
    }

    /** The width of the words from one to before another on a line, in sizes of the font. */
    double width(int from, int to) {
        double width = SPACE * (to - from - 1);
        for (int i = from; i < to; i++) {
            width += widths[i];
        }
        return width;
    }

    /** Those words on a line. */
    String joined(int from, int to) {
        return String.join(" ", words.subList(from, to));
    }
}
