package dev.quoin.order;

import dev.quoin.problem.Quoted;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Values that stand in for one that is still to come, or for none. */
final class StandIns implements ColumnDoubts {
    private static final Set<String> WORDS = Set.of(
            "n/a", "n.a.", "#n/a", "#ref!", "#name?", "#value!", "#div/0!", "tbc", "tba", "tbd", "t.b.c.", "t.b.a.",
            "t.b.d.", "nil", "unknown", "(blank)");
    private static final Pattern SIGNS = Pattern.compile("[-\\u2010-\\u2015.?#*_/]+");
    private static final Pattern SHORTENED = Pattern.compile("[0-9]([.,][0-9]+)?[eE]\\+[0-9]+");

    private final String header;

    StandIns(String header) {
        this.header = header.strip();
    }

    @Override
    public Optional<Doubt> judge(String value) {
        if (value.equalsIgnoreCase(header)) {
            return Optional.of(
                    new Doubt(Quoted.of(value) + " is the name of the column", "write the value, or take the row out"));
        }
        if (WORDS.contains(value.toLowerCase(Locale.ROOT))
                || SIGNS.matcher(value).matches()) {
            return Optional.of(new Doubt(
                    Quoted.of(value) + " would be marked as it stands",
                    "write the value, or empty the cell if there is none"));
        }
        if (SHORTENED.matcher(value).matches()) {
            return Optional.of(new Doubt(
                    Quoted.of(value) + " looks like a long number that a spreadsheet has shortened",
                    "make the column text in the spreadsheet, and type the number again"));
        }
        return Optional.empty();
    }
}
