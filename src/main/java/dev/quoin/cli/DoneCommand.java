package dev.quoin.cli;

import dev.quoin.job.Done;
import dev.quoin.job.Outcome;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code quoin done RUN --plate 3 --took 7:41 --failed 4,9 --reason slipped}. */
@Command(
        name = "done",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Records that a plate or a reprint is done: the time it took by the clock, and the items that failed.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  quoin done runs/orchard-fair --plate 3 --took 7:41",
            "  quoin done runs/orchard-fair --plate 3 --failed 54,57 --reason slipped",
            "  quoin done runs/orchard-fair --reprint 1"
        })
final class DoneCommand implements Callable<Integer> {
    private final Console console;
    private final Path workingFolder;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "RUN", description = "The run folder.")
    private String run;

    @ArgGroup(multiplicity = "1")
    private Which which;

    @Option(names = "--took", paramLabel = "TIME", description = "Loading and marking by the clock: m:ss or h:mm:ss.")
    private String took = "";

    @Option(names = "--failed", paramLabel = "NUMBERS", description = "The items that failed, such as 4,9.")
    private String failed = "";

    @Option(names = "--reason", paramLabel = "TEXT", description = "Why they failed.")
    private String reason = "";

    @Mixin
    private OutputOptions output = new OutputOptions();

    /** What is done: one of the two. */
    static final class Which {
        @Option(names = "--plate", paramLabel = "NUMBER", description = "The plate that is done.")
        private int plate;

        @Option(names = "--reprint", paramLabel = "NUMBER", description = "The reprint that is done.")
        private int reprint;
    }

    DoneCommand(Console console, Path workingFolder) {
        this.console = console;
        this.workingFolder = workingFolder;
    }

    @Override
    public Integer call() throws IOException {
        if (!reason.isEmpty() && failed.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(), "--reason is for items that failed; name them with --failed");
        }
        Done.Loading loading =
                which.reprint > 0 ? new Done.Loading(true, which.reprint) : new Done.Loading(false, which.plate);
        Path folder = workingFolder.resolve(run).normalize();
        SortedSet<Integer> items = NumberList.read(spec, "--failed", failed, "item numbers such as 4,9");
        Outcome<Done.Recorded> outcome = new Done(folder, loading, seconds(), items, reason, Clock.systemUTC()).run();
        console.complain(outcome.problems());
        if (outcome.result().isEmpty()) {
            return ExitStatus.BAD_INPUT.code();
        }
        if (output.json()) {
            console.say(RecordText.json(outcome.result().get()));
        } else if (!output.quiet()) {
            console.say(RecordText.line(outcome.result().get()));
        }
        return ExitStatus.DONE.code();
    }

    private OptionalDouble seconds() {
        if (took.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble seconds = ClockTime.parse(took);
        if (seconds.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--took '" + took + "' is no time; write minutes and seconds as 7:41, or 1:07:41");
        }
        return seconds;
    }
}
