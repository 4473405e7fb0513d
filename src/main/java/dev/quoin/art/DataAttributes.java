package dev.quoin.art;

import dev.quoin.drawing.Element;
import dev.quoin.drawing.VariableText;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Suggestion;
import java.util.Collection;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads an element's {@code data-*} attributes that hold constants. */
record DataAttributes(Element element, Problems problems) {
    /** A constant text; a placeholder in it is a problem. */
    Optional<String> text(String name) {
        Optional<VariableText> value = element.data(name);
        if (value.isPresent() && !value.get().isConstant()) {
            problems.error(
                    element.place(),
                    element.describe() + ": data-" + name + " cannot hold a placeholder",
                    "write its value into the template");
            return Optional.empty();
        }
        return value.map(text -> text.source().strip());
    }

    /** A number from {@code least} to {@code greatest}; else a problem, and nothing. */
    OptionalDouble number(String name, double least, double greatest) {
        Optional<String> text = text(name);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            double value = Double.parseDouble(text.get());
            if (value >= least && value <= greatest) {
                return OptionalDouble.of(value);
            }
        } catch (NumberFormatException notANumber) {
            // Told below, like a number out of range.
        }
        problems.error(
                element.place(),
                element.describe() + ": data-" + name + " is '" + text.get() + "'",
                "write a number from " + range(least) + " to " + range(greatest));
        return OptionalDouble.empty();
    }

    /** One of a list of words; else a problem, and nothing. */
    Optional<String> word(String name, Collection<String> words) {
        Optional<String> word = text(name);
        if (word.isPresent() && !words.contains(word.get())) {
            problems.error(
                    element.place(),
                    element.describe() + ": data-" + name + " is '" + word.get() + "'",
                    Suggestion.remedy(word.get(), words));
            return Optional.empty();
        }
        return word;
    }

    private static String range(double value) {
        return dev.quoin.geometry.Decimals.mm(value);
    }
}
