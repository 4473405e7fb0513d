package dev.quoin.cli;

import dev.quoin.job.Extend;
import dev.quoin.job.Outcome;
import dev.quoin.job.Progress;
import dev.quoin.problem.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.SortedSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code quoin extend RUN NEW_ORDER.csv}. */
@Command(
        name = "extend",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Prepares the rows that were added to the order of a run: new plates, numbered on, with a sheet of their own. "
                    + "What was prepared stays as it is. If rows were changed or are gone, nothing is written unless you "
                    + "say with --add which rows are added.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  quoin extend runs/orchard-fair order.csv",
            "  quoin extend runs/orchard-fair order.csv --add 560-574"
        })
final class ExtendCommand implements Callable<Integer> {
    private final Console console;
    private final Path workingFolder;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "RUN", description = "The run folder.")
    private String run;

    @Parameters(index = "1", paramLabel = "NEW_ORDER.csv", description = "The order as it is now, with all its rows.")
    private String order;

    @Option(
            names = "--add",
            paramLabel = "LINES",
            description = "The lines of the new order on which the added rows start, such as 12,40-44.")
    private String added = "";

    @Mixin
    private OutputOptions output = new OutputOptions();

    ExtendCommand(Console console, Path workingFolder) {
        this.console = console;
        this.workingFolder = workingFolder;
    }

    @Override
    public Integer call() throws IOException {
        Path folder = workingFolder.resolve(run).normalize();
        SortedSet<Integer> lines = NumberList.read(spec, "--add", added, "lines such as 12,40-44");
        Outcome<Extend.Extension> outcome =
                new Extend(folder, workingFolder.resolve(order).normalize(), lines, Progress.SILENT).run();
        console.complain(outcome.problems());
        if (output.json()) {
            console.say(RecordText.jsonOfExtension(outcome));
        } else if (outcome.result().isPresent() && !output.quiet()) {
            RecordText.lines(outcome.result().get(), workingFolder).forEach(console::say);
        }
        boolean failed = outcome.problems().stream().anyMatch(Problem::isError);
        return outcome.result().isEmpty() && failed ? ExitStatus.BAD_INPUT.code() : ExitStatus.DONE.code();
    }
}
