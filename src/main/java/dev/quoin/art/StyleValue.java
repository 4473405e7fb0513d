package dev.quoin.art;

import java.util.regex.Pattern;

/**
 * What a placeholder in a {@code style} attribute may give: one value of a property, such as a colour, a number or
 * {@code rgb(...)}. Anything that ends the value or begins something else (a semicolon, a brace, a quote, a comment)
 * could add declarations that the template does not have.
 */
final class StyleValue {
    private static final String PLAIN = "[\\p{L}\\p{N}#.,%+_\\- ]*";
    private static final Pattern VALUE = Pattern.compile(PLAIN + "(\\(" + PLAIN + "\\)" + PLAIN + ")*");

    private StyleValue() {}

    /** A part of a style that gives plain values only. */
    static TextSource.Part only(TextSource.Part part) {
        return row -> {
            String value = part.merge(row);
            if (!VALUE.matcher(value).matches()) {
                throw new MergeFailure(
                        "'" + value + "' is not one value of a style", "give a colour, a number or a word");
            }
            return value;
        };
    }
}
