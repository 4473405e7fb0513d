package dev.quoin.cli;

import java.util.List;
import picocli.CommandLine.Model.OptionSpec;

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
        return of(String.class, name, label, help);
    }

    static Option<Integer> integer(String name, String label, String help) {
        return of(Integer.class, name, label, help);
    }

    static Option<Double> decimal(String name, String label, String help) {
        return of(Double.class, name, label, help);
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

    private static <T> Option<T> of(Class<T> type, String name, String label, String help) {
        return new Option<>(OptionSpec.builder(name)
                .type(type)
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
