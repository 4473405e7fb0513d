package dev.quoin.paper;

import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * About how wide a text prints in a plain sans-serif of unknown make, rather too wide than too narrow, in units of the
 * font's size. Papers use it to choose a size; nothing that is marked depends on it.
 */
final class TextWidth {
    /** What a reader takes for one character; {@code BreakIterator} of this platform splits emoji and Indic clusters. */
    private static final Pattern GRAPHEME = Pattern.compile("\\X");

    private static final int FIRST_COMBINING = 0x300;
    private static final int FIRST_WIDE = 0x2E80;
    private static final int FIRST_EMOJI = 0x1F000;

    /** Of the characters that most texts are of, since a sheet asks for each many times. */
    private static final double[] PLAIN = plain();

    private TextWidth() {}

    static double of(String text) {
        double width = 0;
        int plain = 0;
        while (plain < text.length() && text.charAt(plain) < FIRST_COMBINING) {
            width += PLAIN[text.charAt(plain++)];
        }
        return plain == text.length() ? width : ofGraphemes(text);
    }

    private static double ofGraphemes(String text) {
        double width = 0;
        for (Matcher each = GRAPHEME.matcher(text); each.find(); ) {
            width += ofCharacter(each.group().codePointAt(0));
        }
        return width;
    }

    /** The text if it fits into {@code most}, else its beginning and an ellipsis; empty where less than two would be left. */
    static String shortened(String text, double most) {
        if (of(text) <= most) {
            return text;
        }
        double width = ofCharacter('\u2026');
        int end = 0;
        int kept = 0;
        for (Matcher each = GRAPHEME.matcher(text); each.find(); ) {
            width += ofCharacter(each.group().codePointAt(0));
            if (width > most) {
                break;
            }
            end = each.end();
            kept++;
        }
        return kept < 2 ? "" : text.substring(0, end).stripTrailing() + "\u2026";
    }

    private static double[] plain() {
        double[] widths = new double[FIRST_COMBINING];
        Arrays.setAll(widths, TextWidth::ofCharacter);
        return widths;
    }

    private static double ofCharacter(int character) {
        if (isWide(character)) {
            return 1.05;
        }
        if (character == 'W' || character == 'M' || character == 'm' || character == 'w' || character == '\u2026') {
            return 0.98;
        }
        if (character == ' ' || "iIjl.,:;'|!()[]".indexOf(character) >= 0) {
            return 0.38;
        }
        return Character.isUpperCase(character) || character > 0x024F ? 0.74 : 0.6;
    }

    private static boolean isWide(int character) {
        return Character.isIdeographic(character)
                || character >= FIRST_EMOJI
                || (character >= FIRST_WIDE && character < 0xD7FF)
                || (character >= 0xFF00 && character <= 0xFF60);
    }
}
