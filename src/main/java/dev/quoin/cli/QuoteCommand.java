package dev.quoin.cli;

import dev.quoin.job.JobSettings;
import dev.quoin.job.Outcome;
import dev.quoin.job.Progress;
import dev.quoin.job.Quotation;
import dev.quoin.job.Quote;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** {@code quoin quote JOB}. */
final class QuoteCommand extends JobCommand<Quotation> {
    private final Option<List<String>> otherJigs =
            Option.texts("--other-jig", "FILE", "A jig to compare with the job's own; may be given several times.");

    QuoteCommand(Console console, Path workingFolder) {
        super(console, workingFolder);
    }

    @Override
    Usage usage() {
        return usage(
                        "Compares what a job takes through each lens of the shop, and on other jigs, says which to take, and writes "
                                + "nothing.")
                .takes(otherJigs)
                .examples(
                        "quoin quote sample-orders/orchard-fair",
                        "quoin quote sample-orders/harbour-tags --other-jig my-tray.svg");
    }

    @Override
    Outcome<Quotation> work(JobSettings settings, Progress progress, Problems problems) throws IOException {
        return new Quote(settings, otherJigs.orElse(List.of()), progress).run(problems);
    }

    @Override
    String json(Quotation quotation, List<Problem> problems) {
        return QuoteText.json(quotation, problems);
    }

    @Override
    List<String> lines(Quotation quotation, List<Problem> problems) {
        return QuoteText.lines(quotation);
    }

    @Override
    String refused(List<Problem> problems) {
        return "not quoted: " + SummaryText.count(problems);
    }

    @Override
    ExitStatus status(Quotation quotation, List<Problem> problems) {
        return quotation.choice().isPresent() ? ExitStatus.DONE : ExitStatus.BAD_INPUT;
    }
}
