package dev.quoin.art;

import java.text.ParsePosition;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.TemporalQueries;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The form in which a column's dates are typed: letters as {@code java.time} has them ({@code d/M/yyyy}, {@code d MMMM
 * yyyy}). The year has four digits, unless the form says {@code yy}, which means 2000 to 2099. Only days that exist are
 * dates; none is ever moved to the next.
 */
public final class DateForm {
    private static final Pattern TWO_DIGIT_YEAR = Pattern.compile("(?<!\\d)\\d{2}(?!\\d)");
    private static final LocalDate SAMPLE = LocalDate.of(2034, 11, 25);

    private final String pattern;
    private final DateTimeFormatter formatter;

    private DateForm(String pattern, DateTimeFormatter formatter) {
        this.pattern = pattern;
        this.formatter = formatter;
    }

    /** The form of a pattern; nothing if it does not say day, month and year. */
    public static Optional<DateForm> of(String pattern, Locale locale) {
        try {
            DateTimeFormatter formatter = new DateTimeFormatterBuilder()
                    .parseCaseInsensitive()
                    .appendPattern(withPlainYears(pattern))
                    .toFormatter(locale)
                    .withResolverStyle(ResolverStyle.STRICT);
            boolean says = formatter
                    .parse(SAMPLE.format(formatter), TemporalQueries.localDate())
                    .equals(SAMPLE);
            return says ? Optional.of(new DateForm(pattern, formatter)) : Optional.empty();
        } catch (DateTimeException | IllegalArgumentException | NullPointerException notAForm) {
            return Optional.empty();
        }
    }

    /**
     * The day that a text names.
     *
     * @throws MergeFailure if it names none, with the reason
     */
    LocalDate parse(String text) throws MergeFailure {
        try {
            return formatter.parse(text, TemporalQueries.localDate());
        } catch (DateTimeException e) {
            throw failure(text);
        }
    }

    private MergeFailure failure(String text) {
        if (hasItsShape(text)) {
            return new MergeFailure("there is no such day as '" + text + "' (" + pattern + ")", "correct the date");
        }
        if (!pattern.matches(".*(?<![uy])(uu|yy)(?![uy]).*") && hasTwoDigitYear(text)) {
            return new MergeFailure(
                    "'" + text + "' has a year of two digits, and the form is " + pattern,
                    "write the year with four digits, or say yy in --date-format if all are from 2000 to 2099");
        }
        return new MergeFailure(
                "'" + text + "' is no date of the form " + pattern, "write it so, or correct --date-format");
    }

    private boolean hasItsShape(String text) {
        ParsePosition position = new ParsePosition(0);
        boolean parsed = formatter.parseUnresolved(text, position) != null;
        return parsed && position.getErrorIndex() < 0 && position.getIndex() == text.length();
    }

    /** Whether it would be right if its last number of two digits were a year of four. */
    private boolean hasTwoDigitYear(String text) {
        return TWO_DIGIT_YEAR
                .matcher(text)
                .results()
                .anyMatch(year -> hasItsShape(text.substring(0, year.start()) + "20" + text.substring(year.start())));
    }

    /** A year without an era, which the strict reading needs; four digits but for {@code yy}. Quoted text is left alone. */
    private static String withPlainYears(String pattern) {
        StringBuilder plain = new StringBuilder();
        String[] pieces = pattern.split("'", -1);
        for (int i = 0; i < pieces.length; i++) {
            plain.append(i == 0 ? "" : "'");
            plain.append(i % 2 == 0 ? withPlainYear(pieces[i]) : pieces[i]);
        }
        return plain.toString();
    }

    private static String withPlainYear(String piece) {
        return Pattern.compile("[uy]+")
                .matcher(piece)
                .replaceAll(year -> year.end() - year.start() == 2 ? "uu" : "uuuu");
    }

    @Override
    public String toString() {
        return pattern;
    }
}
