package dev.quoin.cli;

import dev.quoin.job.Check;
import dev.quoin.job.JobSettings;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code quoin check JOB}. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {"Says everything that is wrong with a job, in one go, and writes nothing.", ""},
        footer = {"", "Example:", "  quoin check sample-orders/harbour-tags"})
final class CheckCommand implements Callable<Integer> {
    private final Console console;
    private final Path workingFolder;

    @Mixin
    private JobParameter job = new JobParameter();

    @Mixin
    private OutputOptions output = new OutputOptions();

    CheckCommand(Console console, Path workingFolder) {
        this.console = console;
        this.workingFolder = workingFolder;
    }

    @Override
    public Integer call() throws IOException {
        Problems problems = new Problems();
        JobSettings settings = job.settings(workingFolder, problems);
        List<Problem> found;
        try (ProgressLine progress = new ProgressLine(console.isTerminal() && !output.quiet())) {
            found = new Check(settings, progress).run(problems).problems();
        }
        console.complain(found);
        if (output.json()) {
            console.say(SummaryText.json(found));
        } else if (!output.quiet()) {
            console.say(settings.name() + ": " + SummaryText.count(found));
        }
        return (found.stream().anyMatch(Problem::isError) ? ExitStatus.BAD_INPUT : ExitStatus.DONE).code();
    }
}
