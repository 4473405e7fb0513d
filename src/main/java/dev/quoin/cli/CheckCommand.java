package dev.quoin.cli;

import dev.quoin.job.Check;
import dev.quoin.job.JobSettings;
import dev.quoin.job.Outcome;
import dev.quoin.job.Progress;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** {@code quoin check JOB}. */
final class CheckCommand extends JobCommand<String> {
    CheckCommand(Console console, Path workingFolder) {
        super(console, workingFolder);
    }

    @Override
    Usage usage() {
        return usage("Says everything that is wrong with a job, in one go, and writes nothing.")
                .examples("quoin check sample-orders/harbour-tags");
    }

    /** Gives the job's name: however much is wrong, it was checked. */
    @Override
    Outcome<String> work(JobSettings settings, Progress progress, Problems problems) throws IOException {
        List<Problem> found = new Check(settings, progress).run(problems).problems();
        return new Outcome<>(Optional.of(settings.name()), found);
    }

    @Override
    String json(String name, List<Problem> problems) {
        return SummaryText.json(problems);
    }

    @Override
    List<String> lines(String name, List<Problem> problems) {
        return List.of(name + ": " + SummaryText.count(problems));
    }

    @Override
    ExitStatus status(String name, List<Problem> problems) {
        return problems.stream().anyMatch(Problem::isError) ? ExitStatus.BAD_INPUT : ExitStatus.DONE;
    }
}
