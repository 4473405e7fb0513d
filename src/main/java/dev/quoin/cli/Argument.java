package dev.quoin.cli;

import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.ParameterException;

/**
 * An option or a parameter of a command: what the help says of it, and what was given for it. It is made by calls, not by
 * annotations, since Java would make a class for each kind of annotation at every start.
 *
 * @param <T> what it takes
 */
sealed interface Argument<T> permits Option, Parameter {
    /** It, as the parser knows it; the parser keeps its value there. */
    ArgSpec spec();

    /** What was given. */
    default Optional<T> given() {
        T value = spec().getValue();
        return Optional.ofNullable(value);
    }

    /** What was given, or else this. */
    default T orElse(T otherwise) {
        return given().orElse(otherwise);
    }

    /** What was given for an argument that must be given. */
    default T value() {
        return given().orElseThrow();
    }

    /** The command line that it is part of. */
    default CommandLine commandLine() {
        return spec().command().commandLine();
    }

    /** A wrong usage that the parser does not see. */
    default ParameterException wrong(String what) {
        return new ParameterException(commandLine(), what);
    }
}
