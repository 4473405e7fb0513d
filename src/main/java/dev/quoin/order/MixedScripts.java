package dev.quoin.order;

import dev.quoin.problem.Quoted;
import java.lang.Character.UnicodeScript;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Words with letters of two scripts, such as a Latin name with one Cyrillic letter that looks the same. As in Unicode
 * Technical Standard 39, section 5.2 (Highly Restrictive), scripts that are written together are one: Latin with Chinese,
 * Japanese or Korean.
 */
final class MixedScripts implements ColumnDoubts {
    private static final Set<UnicodeScript> WRITTEN_TOGETHER = EnumSet.of(
            UnicodeScript.LATIN,
            UnicodeScript.HAN,
            UnicodeScript.HIRAGANA,
            UnicodeScript.KATAKANA,
            UnicodeScript.HANGUL,
            UnicodeScript.BOPOMOFO);
    private static final Set<UnicodeScript> NEUTRAL =
            EnumSet.of(UnicodeScript.COMMON, UnicodeScript.INHERITED, UnicodeScript.UNKNOWN);

    @Override
    public Optional<Doubt> judge(String value) {
        UnicodeScript first = UnicodeScript.COMMON;
        for (int i = 0; i < value.length(); i += Character.charCount(value.codePointAt(i))) {
            int c = value.codePointAt(i);
            UnicodeScript script = UnicodeScript.of(c);
            if (!Character.isLetter(c) && Character.getType(c) != Character.NON_SPACING_MARK) {
                first = UnicodeScript.COMMON;
            } else if (!NEUTRAL.contains(script)) {
                if (NEUTRAL.contains(first)) {
                    first = script;
                } else if (!together(first, script)) {
                    return Optional.of(doubt(value, c, first, script));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean together(UnicodeScript a, UnicodeScript b) {
        return a == b || WRITTEN_TOGETHER.contains(a) && WRITTEN_TOGETHER.contains(b);
    }

    private static Doubt doubt(String value, int letter, UnicodeScript first, UnicodeScript second) {
        return new Doubt(
                Quoted.of(value) + " has " + name(first) + " and " + name(second) + " letters in one word ("
                        + Character.toString(letter) + " is " + String.format(Locale.ROOT, "U+%04X ", letter)
                        + Character.getName(letter) + ")",
                "type the word again in one script");
    }

    private static String name(UnicodeScript script) {
        String name = script.name();
        return name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
