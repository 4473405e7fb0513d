package dev.quoin.cli;

import dev.quoin.job.HeadStart;
import dev.quoin.job.JobSettings;
import dev.quoin.job.Outcome;
import dev.quoin.job.Prepare;
import dev.quoin.job.Progress;
import dev.quoin.job.RunSummary;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** {@code quoin prepare JOB}. */
final class PrepareCommand extends JobCommand<RunSummary> {
    private final Option<Boolean> watch = Option.flag(
            "--watch",
            "Stay, and prepare it again as soon as one of its files is saved, in the run folder made first.");

    private HeadStart ahead = HeadStart.none();

    PrepareCommand(Console console, Path workingFolder) {
        super(console, workingFolder);
    }

    @Override
    Usage usage() {
        return usage("Prepares a job: writes a run folder with numbered plate files, the run sheet and the tables.")
                .takes(watch)
                .examples(
                        "quoin prepare sample-orders/harbour-tags",
                        "quoin prepare names.csv --template tag.svg --jig tray.csv --recipe slate");
    }

    @Override
    void begin() {
        ahead = HeadStart.toPrepare();
    }

    @Override
    public Integer call() throws IOException {
        return watch.orElse(false) ? new WatchedJob(console, workingFolder, job, output, ahead).run() : super.call();
    }

    @Override
    Outcome<RunSummary> work(JobSettings settings, Progress progress, Problems problems) throws IOException {
        return new Prepare(settings, progress, ahead).run(problems);
    }

    @Override
    String json(RunSummary summary, List<Problem> problems) {
        return SummaryText.json(summary, problems);
    }

    @Override
    List<String> lines(RunSummary summary, List<Problem> problems) {
        return SummaryText.lines(summary, problems, workingFolder);
    }
}
