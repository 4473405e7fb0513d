package dev.quoin.cli;

import dev.quoin.job.JobSettings;
import dev.quoin.job.Outcome;
import dev.quoin.job.Progress;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine;

/**
 * A command that takes a job: it reads what is set for it, shows how the work goes, tells all problems, and then says what
 * came of it.
 *
 * @param <R> what the work gives
 */
abstract class JobCommand<R> extends Command {
    final JobParameter job = new JobParameter();

    JobCommand(Console console, Path workingFolder) {
        super(console, workingFolder);
    }

    /** Begins the usage of such a command, whose help begins with this. */
    final Usage usage(String about) {
        return new Usage(this, about).takes(job.parameter()).takes(output.options());
    }

    @Override
    final CommandLine commandLine() {
        return JobArguments.addTo(super.commandLine());
    }

    /** Does the work; {@code problems} holds what was found in the settings. */
    abstract Outcome<R> work(JobSettings settings, Progress progress, Problems problems) throws IOException;

    /** What came of it, for a script. */
    abstract String json(R result, List<Problem> problems);

    /** What came of it, for a person. */
    abstract List<String> lines(R result, List<Problem> problems);

    /** What is said where errors stood in the way. */
    String refused(List<Problem> problems) {
        return SummaryText.refused(problems);
    }

    /** How a command ends whose work gave something. */
    ExitStatus status(R result, List<Problem> problems) {
        return ExitStatus.DONE;
    }

    @Override
    public Integer call() throws IOException {
        Problems found = new Problems();
        JobSettings settings = job.settings(workingFolder, found);
        Outcome<R> outcome;
        try (ProgressLine progress = new ProgressLine(console.isTerminal() && !output.quiet())) {
            outcome = work(settings, progress, found);
        }
        List<Problem> problems = outcome.problems();
        console.complain(problems);
        if (outcome.result().isEmpty()) {
            console.complain(refused(problems));
            return ExitStatus.BAD_INPUT.code();
        }
        R result = outcome.result().get();
        if (output.json()) {
            console.say(json(result, problems));
        } else if (!output.quiet()) {
            lines(result, problems).forEach(console::say);
        }
        return status(result, problems).code();
    }
}
