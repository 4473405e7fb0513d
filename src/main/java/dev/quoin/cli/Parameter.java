package dev.quoin.cli;

import java.util.List;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * A parameter of a command, known by its position; it must be given.
 *
 * @param <T> what it takes
 */
record Parameter<T>(PositionalParamSpec spec) implements Argument<T> {
    static Parameter<String> text(String label, String help) {
        return new Parameter<>(PositionalParamSpec.builder()
                .type(String.class)
                .required(true)
                .paramLabel(label)
                .description(help)
                .build());
    }

    /** A parameter that may be given several times. */
    static Parameter<List<String>> texts(String label, String help) {
        return new Parameter<>(PositionalParamSpec.builder()
                .type(List.class)
                .auxiliaryTypes(String.class)
                .arity("1..*")
                .required(true)
                .paramLabel(label)
                .description(help)
                .build());
    }
}
