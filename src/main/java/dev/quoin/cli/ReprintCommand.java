package dev.quoin.cli;

import dev.quoin.job.ItemNumbers;
import dev.quoin.job.Outcome;
import dev.quoin.job.Reprint;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code quoin reprint RUN --item 37,52-54}. */
@Command(
        name = "reprint",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Writes files that mark failed items again, each in its own slot, with a small sheet; one file for each plate.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  quoin reprint runs/harbour-tags --item 7 --reason slipped",
            "  quoin reprint runs/orchard-fair --item 37,52-54",
            "  quoin reprint runs/harbour-tags --item 7 --slot B2"
        })
final class ReprintCommand implements Callable<Integer> {
    private final Console console;
    private final Path workingFolder;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "RUN", description = "The run folder.")
    private String run;

    @Option(names = "--item", required = true, paramLabel = "NUMBERS", description = "The items, such as 37,52-54.")
    private String items;

    @Option(names = "--slot", paramLabel = "SLOT", description = "Mark the one item in this slot instead of its own.")
    private Optional<String> slot = Optional.empty();

    @Option(
            names = "--reason",
            paramLabel = "TEXT",
            description = "Why; kept in the run's log and printed on the sheet.")
    private String reason = "";

    @Mixin
    private OutputOptions output = new OutputOptions();

    ReprintCommand(Console console, Path workingFolder) {
        this.console = console;
        this.workingFolder = workingFolder;
    }

    @Override
    public Integer call() throws IOException {
        SortedSet<Integer> numbers = ItemNumbers.parse(items)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(), "--item '" + items + "' is no list of item numbers such as 37,52-54"));
        if (slot.isPresent() && numbers.size() != 1) {
            throw new ParameterException(spec.commandLine(), "--slot takes one item at a time");
        }
        Path folder = workingFolder.resolve(run).normalize();
        Outcome<List<Reprint.Written>> outcome = new Reprint(folder, numbers, slot, reason, Clock.systemUTC()).run();
        console.complain(outcome.problems());
        if (outcome.result().isEmpty()) {
            return ExitStatus.BAD_INPUT.code();
        }
        if (output.json()) {
            console.say(SummaryText.reprints(outcome.result().get()));
        } else if (!output.quiet()) {
            outcome.result().get().forEach(written -> console.say(SummaryText.line(written, folder, workingFolder)));
        }
        return ExitStatus.DONE.code();
    }
}
