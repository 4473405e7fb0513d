package dev.quoin.cli;

import dev.quoin.geometry.Decimals;
import dev.quoin.job.HeadStart;
import dev.quoin.job.InputWatch;
import dev.quoin.job.JobSettings;
import dev.quoin.job.Outcome;
import dev.quoin.job.Prepare;
import dev.quoin.job.Progress;
import dev.quoin.job.RunSummary;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * {@code quoin prepare --watch}: prepares a job again as soon as one of its inputs is saved, into the run folder that it has
 * written itself. It ends when its thread is interrupted, or with the program.
 */
final class WatchedJob {
    private final Console console;
    private final Path workingFolder;
    private final JobParameter job;
    private final OutputOptions output;
    private final HeadStart ahead;
    /** Whether the run folder is of our own making, so that it may be replaced. */
    private boolean own;

    WatchedJob(Console console, Path workingFolder, JobParameter job, OutputOptions output, HeadStart ahead) {
        this.console = console;
        this.workingFolder = workingFolder;
        this.job = job;
        this.output = output;
        this.ahead = ahead;
    }

    /** @throws IOException if the job cannot be read the first time, or its run cannot be written */
    int run() throws IOException {
        try (InputWatch watch = new InputWatch()) {
            prepare(watch);
            if (!output.quiet() && !output.json()) {
                console.sayNow("watching its files; Ctrl-C ends");
            }
            while (true) {
                watch.await();
                prepareAgain(watch);
            }
        } catch (InterruptedException end) {
            Thread.currentThread().interrupt();
            return ExitStatus.DONE.code();
        }
    }

    /** While a program saves, a file may be missing for a moment. */
    private void prepareAgain(InputWatch watch) throws IOException {
        try {
            prepare(watch);
        } catch (NoSuchFileException e) {
            console.complain(e.getFile() + ": is missing; waiting for it");
        }
    }

    private void prepare(InputWatch watch) throws IOException {
        long start = System.nanoTime();
        Problems problems = new Problems();
        JobSettings settings = job.settings(workingFolder, problems);
        watch.add(settings.inputFolders());
        Prepare prepare = new Prepare(own ? settings.replacing() : settings, Progress.SILENT, ahead);
        Outcome<RunSummary> outcome = prepare.run(problems);
        watch.add(prepare.inputFolders());
        console.complain(outcome.problems());
        if (outcome.result().isPresent()) {
            own = true;
            tell(outcome.result().get(), outcome, (System.nanoTime() - start) / 1e9);
        } else {
            console.complain(SummaryText.refused(outcome.problems()));
        }
    }

    private void tell(RunSummary summary, Outcome<RunSummary> outcome, double seconds) {
        if (output.json()) {
            console.sayNow(SummaryText.json(summary, outcome.problems()));
        } else if (!output.quiet()) {
            console.sayNow(SummaryText.watched(summary, outcome.problems(), workingFolder) + ", in "
                    + Decimals.text(seconds, 2) + " s");
        }
    }
}
