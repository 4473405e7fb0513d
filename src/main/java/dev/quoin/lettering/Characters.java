package dev.quoin.lettering;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the Unicode Standard says about characters, as far as setting them needs it. */
final class Characters {
    /** An extended grapheme cluster (UAX #29). */
    private static final Pattern GRAPHEME = Pattern.compile("\\X");

    /** Default_Ignorable_Code_Point (Unicode 15, DerivedCoreProperties.txt), as ranges: first, last, first, last ... */
    private static final int[] IGNORABLE = {
        0xAD, 0xAD, 0x34F, 0x34F, 0x61C, 0x61C, 0x115F, 0x1160, 0x17B4, 0x17B5, 0x180B, 0x180F, 0x200B, 0x200F, 0x202A,
        0x202E, 0x2060, 0x206F, 0x3164, 0x3164, 0xFE00, 0xFE0F, 0xFEFF, 0xFEFF, 0xFFA0, 0xFFA0, 0xFFF0, 0xFFF8, 0x1BCA0,
        0x1BCA3, 0x1D173, 0x1D17A, 0xE0000, 0xE0FFF
    };

    private static final int BRAILLE_BLANK = 0x2800;

    private Characters() {}

    /** The text cut into what a reader takes for one character each. */
    static List<String> graphemes(String text) {
        List<String> found = new ArrayList<>();
        Matcher matcher = GRAPHEME.matcher(text);
        int end = 0;
        while (matcher.find()) {
            found.add(matcher.group());
            end = matcher.end();
        }
        if (end < text.length()) {
            found.add(text.substring(end));
        }
        return found;
    }

    /** Whether it steers other characters and shows nothing itself. */
    static boolean isIgnorable(int codePoint) {
        for (int i = 0; i < IGNORABLE.length && codePoint >= IGNORABLE[i]; i += 2) {
            if (codePoint <= IGNORABLE[i + 1]) {
                return true;
            }
        }
        return false;
    }

    /** Whether it is a space of some width. */
    static boolean isSpace(int codePoint) {
        return Character.isSpaceChar(codePoint);
    }

    /** Whether a reader expects ink where it stands. */
    static boolean showsInk(int codePoint) {
        return !isIgnorable(codePoint) && !isSpace(codePoint) && codePoint != BRAILLE_BLANK;
    }

    /** As a message names it: {@code U+00EB LATIN SMALL LETTER E WITH DIAERESIS "ë"}. */
    static String describe(int codePoint) {
        String name = Character.getName(codePoint);
        String number = String.format(Locale.ROOT, "U+%04X", codePoint);
        String named = number + " " + (name == null ? "(no character)" : name);
        return isPrintable(codePoint) ? named + " \"" + Character.toString(codePoint) + "\"" : named;
    }

    private static boolean isPrintable(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
    }
}
