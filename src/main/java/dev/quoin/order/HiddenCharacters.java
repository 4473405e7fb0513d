package dev.quoin.order;

import dev.quoin.problem.Quoted;
import java.lang.Character.UnicodeScript;
import java.util.Optional;

/**
 * Characters that nobody sees and that can garble a marking: those that turn the direction of letters, and those without
 * width; controls are errors already when the table is read. The two joiners (U+200C, U+200D) are a part of how some scripts
 * are written (The Unicode Standard, section 23.2, Cursive Connection and Ligatures) and of emoji; after others they are as
 * doubtful. So is the space without width, but in scripts that set no spaces between words.
 */
final class HiddenCharacters implements ColumnDoubts {
    private static final char ZERO_WIDTH_SPACE = '\u200B';
    private static final char NON_JOINER = '\u200C';
    private static final char JOINER = '\u200D';
    private static final int TATWEEL = 0x640;

    @Override
    public Optional<Doubt> judge(String value) {
        for (int i = 0; i < value.length(); i++) {
            if (isDoubtful(value, i)) {
                char c = value.charAt(i);
                return Optional.of(new Doubt(
                        "a hidden character (" + Quoted.number(c) + " " + Character.getName(c) + ") in "
                                + Quoted.of(
                                        value.substring(0, i) + "<" + Quoted.number(c) + ">" + value.substring(i + 1)),
                        "take it out, or type the value again"));
            }
        }
        return Optional.empty();
    }

    private static boolean isDoubtful(String value, int at) {
        char c = value.charAt(at);
        return switch (c) {
            case NON_JOINER, JOINER -> !isJoined(UnicodeScript.of(base(value, at))) && !followsAPicture(value, at);
            case ZERO_WIDTH_SPACE -> !isWithoutSpaces(UnicodeScript.of(base(value, at)));
            default -> Quoted.isHidden(c) && !Character.isISOControl(c);
        };
    }

    private static boolean isJoined(UnicodeScript script) {
        return switch (script) {
            case ARABIC,
                    SYRIAC,
                    MANDAIC,
                    NKO,
                    MONGOLIAN,
                    DEVANAGARI,
                    BENGALI,
                    GURMUKHI,
                    GUJARATI,
                    ORIYA,
                    TAMIL,
                    TELUGU,
                    KANNADA,
                    MALAYALAM,
                    SINHALA,
                    TIBETAN,
                    MYANMAR,
                    KHMER -> true;
            default -> false;
        };
    }

    private static boolean isWithoutSpaces(UnicodeScript script) {
        return switch (script) {
            case THAI, LAO, KHMER, MYANMAR -> true;
            default -> false;
        };
    }

    /** Emoji are symbols, the newest yet unknown to the platform; a joiner makes one of several. */
    private static boolean followsAPicture(String value, int at) {
        int type = Character.getType(base(value, at));
        return value.charAt(at) == JOINER && (type == Character.OTHER_SYMBOL || type == Character.UNASSIGNED);
    }

    /** The letter or symbol before an index, past the marks and lengthenings on it; 0 if there is none. */
    private static int base(String value, int at) {
        int i = at;
        while (i > 0) {
            int c = value.codePointBefore(i);
            if (!belongsToALetter(c)) {
                return c;
            }
            i -= Character.charCount(c);
        }
        return 0;
    }

    private static boolean belongsToALetter(int c) {
        int type = Character.getType(c);
        return type == Character.NON_SPACING_MARK
                || type == Character.COMBINING_SPACING_MARK
                || type == Character.MODIFIER_SYMBOL
                || c == TATWEEL
                || c == NON_JOINER
                || c == JOINER;
    }
}
