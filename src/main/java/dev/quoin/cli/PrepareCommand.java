package dev.quoin.cli;

import dev.quoin.job.JobSettings;
import dev.quoin.job.Outcome;
import dev.quoin.job.Prepare;
import dev.quoin.job.RunSummary;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code quoin prepare JOB}. */
@Command(
        name = "prepare",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Prepares a job: writes a run folder with numbered plate files, the run sheet and the tables.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  quoin prepare sample-orders/harbour-tags",
            "  quoin prepare names.csv --template tag.svg --jig tray.csv --recipe slate"
        })
final class PrepareCommand implements Callable<Integer> {
    private final Console console;
    private final Path workingFolder;

    @Mixin
    private JobParameter job = new JobParameter();

    @Mixin
    private OutputOptions output = new OutputOptions();

    @Option(
            names = "--watch",
            description =
                    "Stay, and prepare it again as soon as one of its files is saved, in the run folder made first.")
    private boolean watch;

    PrepareCommand(Console console, Path workingFolder) {
        this.console = console;
        this.workingFolder = workingFolder;
    }

    @Override
    public Integer call() throws IOException {
        if (watch) {
            return new WatchedJob(console, workingFolder, job, output).run();
        }
        Problems problems = new Problems();
        JobSettings settings = job.settings(workingFolder, problems);
        Outcome<RunSummary> outcome;
        try (ProgressLine progress = new ProgressLine(console.isTerminal() && !output.quiet())) {
            outcome = new Prepare(settings, progress).run(problems);
        }
        console.complain(outcome.problems());
        if (outcome.result().isEmpty()) {
            console.complain(SummaryText.refused(outcome.problems()));
            return ExitStatus.BAD_INPUT.code();
        }
        RunSummary summary = outcome.result().get();
        if (output.json()) {
            console.say(SummaryText.json(summary, outcome.problems()));
        } else if (!output.quiet()) {
            SummaryText.lines(summary, outcome.problems(), workingFolder).forEach(console::say);
        }
        return ExitStatus.DONE.code();
    }
}
