package dev.quoin.cli;

import java.util.List;
import java.util.function.Function;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.TypeConversionException;

/**
 * An option of a command.
 *
 * @param <T> what it takes
 */
record Option<T>(OptionSpec spec) implements Argument<T> {
    /** An option without a value; one that is given with a value is refused. */
    static Option<Boolean> flag(String name, String help) {
        // The parser takes a value for a truth unless it is told outright that there is none.
        return new Option<>(OptionSpec.builder(name)
                .type(Boolean.class)
                .arity("0")
                .description(help)
                .build());
    }

    static Option<String> text(String name, String label, String help) {
        return of(String.class, text -> text, name, label, help);
    }

    static Option<Integer> integer(String name, String label, String help) {
        return of(Integer.class, number(Integer::valueOf, "no whole number"), name, label, help);
    }

    static Option<Double> decimal(String name, String label, String help) {
        return of(Double.class, number(Double::valueOf, "no number"), name, label, help);
    }

    /** An option that may be given several times. */
    static Option<List<String>> texts(String name, String label, String help) {
        return new Option<>(texts(name, label).description(help).build());
    }

    /** The same, and each time several values with commas between. */
    static Option<List<String>> list(String name, String label, String help) {
        return new Option<>(texts(name, label).splitRegex(",").description(help).build());
    }

    /** The same option, which must be given. */
    Option<T> required() {
        return new Option<>(OptionSpec.builder(spec).required(true).build());
    }

    String name() {
        return spec.longestName();
    }

    private static <T> ITypeConverter<T> number(Function<String, T> read, String otherwise) {
        return text -> {
            try {
                return read.apply(text);
            } catch (NumberFormatException e) {
                throw new TypeConversionException("'" + text + "' is " + otherwise);
            }
        };
    }

    private static <T> Option<T> of(
            Class<T> type, ITypeConverter<T> converter, String name, String label, String help) {
        return new Option<>(OptionSpec.builder(name)
                .type(type)
                .converters(converter)
                .paramLabel(label)
                .description(help)
                .build());
    }

    private static OptionSpec.Builder texts(String name, String label) {
        return OptionSpec.builder(name)
                .type(List.class)
                .auxiliaryTypes(String.class)
                .paramLabel(label);
    }
}
