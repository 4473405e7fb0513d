package dev.quoin.art;

import freemarker.template.SimpleScalar;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateScalarModel;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The template function {@code initials(text)}: the first letter of each word, with its accents, in the case in which it is
 * typed; {@code initials(text, ".")} puts the second text after each. Words are parted by blanks and hyphens.
 */
final class Initials implements TemplateMethodModelEx {
    static final String NAME = "initials";
    private static final Pattern BETWEEN_WORDS = Pattern.compile("[\\s\\h\\p{Pd}]+");
    private static final Pattern CHARACTER = Pattern.compile("\\X");

    @Override
    public TemplateModel exec(@SuppressWarnings("rawtypes") List arguments) throws TemplateModelException {
        if (arguments.isEmpty() || arguments.size() > 2) {
            throw new TemplateModelException("initials takes a text, and perhaps what stands after each letter");
        }
        String after = arguments.size() > 1 ? text(arguments.get(1)) : "";
        return new SimpleScalar(of(text(arguments.get(0)), after));
    }

    static String of(String text, String after) {
        return BETWEEN_WORDS
                .splitAsStream(text.strip())
                .map(Initials::first)
                .filter(letter -> !letter.isEmpty())
                .map(letter -> letter + after)
                .collect(Collectors.joining());
    }

    /** A word's first character that begins with a letter or a digit; quotes and brackets before it are passed over. */
    private static String first(String word) {
        Matcher characters = CHARACTER.matcher(word);
        return characters
                .results()
                .map(MatchResult::group)
                .filter(character -> Character.isLetterOrDigit(character.codePointAt(0)))
                .findFirst()
                .orElse("");
    }

    private static String text(Object argument) throws TemplateModelException {
        if (argument instanceof TemplateScalarModel scalar) {
            return scalar.getAsString();
        }
        throw new TemplateModelException(
                argument == null ? "the text that initials is to shorten is empty" : "initials takes texts");
    }
}
