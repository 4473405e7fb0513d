package dev.quoin.cli;

import dev.quoin.job.Outcome;
import dev.quoin.job.Status;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code quoin status RUN}. */
@Command(
        name = "status",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Says how far the work on a run is: plates done, items failed and redone, by reason, and the hours left.",
            ""
        },
        footer = {"", "Example:", "  quoin status runs/orchard-fair"})
final class StatusCommand implements Callable<Integer> {
    private final Console console;
    private final Path workingFolder;

    @Parameters(paramLabel = "RUN", description = "The run folder.")
    private String run;

    @Mixin
    private OutputOptions output = new OutputOptions();

    StatusCommand(Console console, Path workingFolder) {
        this.console = console;
        this.workingFolder = workingFolder;
    }

    @Override
    public Integer call() throws IOException {
        Outcome<Status.Report> outcome = new Status(workingFolder.resolve(run).normalize()).run();
        console.complain(outcome.problems());
        Status.Report report = outcome.result().orElseThrow();
        if (output.json()) {
            console.say(RecordText.json(report));
        } else if (!output.quiet()) {
            RecordText.lines(report).forEach(console::say);
        }
        return ExitStatus.DONE.code();
    }
}
