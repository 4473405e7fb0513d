package dev.quoin.job;

import dev.quoin.geometry.Decimals;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Suggestion;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * The values that a parameter takes in a trial: so many, evenly from the first to the last.
 *
 * @param count at least 2
 */
record Variation(Parameter parameter, double from, double to, int count) {
    private static final Pattern SYNTAX = Pattern.compile("([a-z]+)=(\\d+(?:\\.\\d+)?):(\\d+(?:\\.\\d+)?):(\\d{1,3})");

    /** Letters name the columns of a trial. */
    static final int MOST = 26;

    private static final Place PLACE = Place.of("--vary");

    /** Reads {@code speed=500:2000:8}. */
    static Optional<Variation> parse(String text, Problems problems) {
        Matcher parts = SYNTAX.matcher(text);
        if (!parts.matches()) {
            problems.error(
                    PLACE, "'" + text + "' names no values", "write them as speed=500:2000:8: first, last, how many");
            return Optional.empty();
        }
        Optional<Parameter> parameter = Parameter.named(parts.group(1));
        if (parameter.isEmpty()) {
            problems.error(
                    PLACE,
                    "'" + parts.group(1) + "' is no parameter of a step",
                    Suggestion.remedy(parts.group(1), Parameter.words()));
            return Optional.empty();
        }
        Variation variation = new Variation(
                parameter.get(),
                Double.parseDouble(parts.group(2)),
                Double.parseDouble(parts.group(3)),
                Integer.parseInt(parts.group(4)));
        return variation.isSound(text, problems) ? Optional.of(variation) : Optional.empty();
    }

    private boolean isSound(String text, Problems problems) {
        if (count < 2 || count > MOST) {
            problems.error(
                    PLACE,
                    "'" + text + "' asks for " + count + (count == 1 ? " value" : " values"),
                    "ask for 2 to " + MOST);
        } else if (IntStream.range(0, count).mapToObj(this::text).distinct().count() < count) {
            problems.error(
                    PLACE, "'" + text + "' gives some value twice", "ask for fewer values, or values further apart");
        } else {
            return true;
        }
        return false;
    }

    /** A value, rounded to what a recipe says. */
    double value(int index) {
        double exact = from + (to - from) * index / (count - 1);
        return parameter.isWhole() ? Math.rint(exact) : Double.parseDouble(Decimals.text(exact, 3));
    }

    String text(int index) {
        return Decimals.text(value(index), 3);
    }
}
