package dev.quoin.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * How a command is called: what it takes, and what its help says, both in the order in which they are named here. Texts have
 * no variables of picocli's.
 */
final class Usage {
    private final CommandSpec spec;
    private final List<String> notes = new ArrayList<>();

    /**
     * Begins the usage of a command.
     *
     * @param command what is done once the command line is read
     * @param about what the help begins with
     */
    Usage(Callable<Integer> command, String about) {
        spec = CommandSpec.wrapWithoutInspection(command).interpolateVariables(false);
        spec.usageMessage().sortOptions(false).description(about, "");
    }

    /** Adds options and parameters. */
    Usage takes(Argument<?>... arguments) {
        Arrays.stream(arguments).map(Argument::spec).forEach(spec::add);
        return this;
    }

    /** Adds options of which just one must be given. */
    Usage takesOneOf(Option<?>... choices) {
        spec.addArgGroup(oneOf(List.of(choices)).build());
        return this;
    }

    /** The same, but instead of one of them the user may give others, which go together. */
    Usage takesOneOf(List<Option<?>> choices, List<Option<?>> together) {
        ArgGroupSpec.Builder others = ArgGroupSpec.builder().exclusive(false);
        together.stream().map(Option::spec).forEach(others::addArg);
        spec.addArgGroup(oneOf(choices).addSubgroup(others.build()).build());
        return this;
    }

    private static ArgGroupSpec.Builder oneOf(List<Option<?>> choices) {
        ArgGroupSpec.Builder group = ArgGroupSpec.builder().exclusive(true).multiplicity("1");
        choices.stream().map(Option::spec).forEach(group::addArg);
        return group;
    }

    /** Adds lines to the end of the help, after an empty one. */
    Usage notes(String... lines) {
        notes.add("");
        notes.addAll(List.of(lines));
        return this;
    }

    /** Adds examples to the end of the help, each a command. */
    Usage examples(String... lines) {
        notes(lines.length == 1 ? "Example:" : "Examples:");
        Arrays.stream(lines).map(line -> "  " + line).forEach(notes::add);
        return this;
    }

    /** A command line that is read so, with the options that every command has. */
    CommandLine commandLine() {
        spec.addOption(OptionSpec.builder("-h", "--help")
                .type(Boolean.class)
                .arity("0")
                .usageHelp(true)
                .description("Show this help message and exit.")
                .build());
        spec.addOption(OptionSpec.builder("-V", "--version")
                .type(Boolean.class)
                .arity("0")
                .versionHelp(true)
                .description("Print version information and exit.")
                .build());
        spec.usageMessage().footer(notes.toArray(String[]::new));
        return new CommandLine(spec);
    }
}
