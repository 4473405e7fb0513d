package dev.quoin.cli;

import dev.quoin.job.Outcome;
import dev.quoin.job.Reprint;
import dev.quoin.job.ReprintRequest;
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
            "Writes files that mark failed items again, each in its own slot, with a small sheet; one file for each plate. "
                    + "With --pack the items are gathered on as few fresh plates as possible.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  quoin reprint runs/harbour-tags --item 7 --reason slipped",
            "  quoin reprint runs/orchard-fair --item 37,52-54",
            "  quoin reprint runs/harbour-tags --item 7 --slot B2",
            "  quoin reprint runs/orchard-fair --failed log --pack",
            "  quoin reprint runs/orchard-fair --plate 3 --only-steps outline"
        })
final class ReprintCommand implements Callable<Integer> {
    /** Stands for a file of failed items: take them from the run's record. */
    private static final String LOG = "log";

    private final Console console;
    private final Path workingFolder;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "RUN", description = "The run folder.")
    private String run;

    @Option(names = "--item", paramLabel = "NUMBERS", description = "The items, such as 37,52-54.")
    private String items = "";

    @Option(names = "--plate", paramLabel = "NUMBERS", description = "All items of these plates, such as 3 or 3,7-8.")
    private String plates = "";

    @Option(
            names = "--failed",
            paramLabel = "FILE",
            description = "The items in the column 'item' of a CSV; or, if FILE is 'log', those that the run's record "
                    + "has as failed and not yet reprinted.")
    private Optional<String> failed = Optional.empty();

    @Option(
            names = "--pack",
            description = "Gather the items of each group in free slots, on as few plates as possible.")
    private boolean pack;

    @Option(
            names = "--only-steps",
            paramLabel = "STEPS",
            split = ",",
            description = "Repeat only these steps, by number or process. The pieces must not have moved.")
    private List<String> onlySteps = List.of();

    @Option(names = "--slot", paramLabel = "SLOT", description = "Mark the one item in this slot instead of its own.")
    private Optional<String> slot = Optional.empty();

    @Option(
            names = "--plate-format",
            paramLabel = "KIND",
            split = ",",
            description = "Write the plate as pdf or dxf too, beside the svg; if not given, as the run was written.")
    private List<String> plateFormats = List.of();

    @Option(
            names = "--sheet",
            paramLabel = "KIND",
            split = ",",
            description = "Write the sheet as pdf too, beside the html; if not given, as the run was written.")
    private List<String> sheets = List.of();

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
        Path folder = workingFolder.resolve(run).normalize();
        Outcome<List<Reprint.Written>> outcome = new Reprint(folder, request(), Clock.systemUTC()).run();
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

    private ReprintRequest request() {
        SortedSet<Integer> itemNumbers = numbers("--item", items);
        boolean fromLog = failed.isPresent() && failed.get().equals(LOG);
        ReprintRequest request = new ReprintRequest(
                itemNumbers,
                numbers("--plate", plates),
                fromLog ? Optional.empty() : failed.map(workingFolder::resolve),
                fromLog,
                slot,
                pack,
                onlySteps.stream().map(String::strip).toList(),
                plateFormats.stream().map(String::strip).toList(),
                sheets.stream().map(String::strip).toList(),
                reason);
        if (items.isEmpty() && plates.isEmpty() && failed.isEmpty()) {
            throw wrong("say which items: --item, --plate or --failed");
        }
        if (slot.isPresent() && (itemNumbers.size() != 1 || !plates.isEmpty() || failed.isPresent() || pack)) {
            throw wrong("--slot takes one --item at a time, and no --pack");
        }
        if (!onlySteps.isEmpty() && (slot.isPresent() || pack)) {
            throw wrong("--only-steps is for pieces that have not moved, so it goes with neither --slot nor --pack");
        }
        return request;
    }

    private SortedSet<Integer> numbers(String option, String text) {
        return NumberList.read(spec, option, text, "numbers such as 37,52-54");
    }

    private ParameterException wrong(String what) {
        return new ParameterException(spec.commandLine(), what);
    }
}
