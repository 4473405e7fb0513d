package dev.quoin.cli;

import dev.quoin.job.JobSettings;
import dev.quoin.job.Outcome;
import dev.quoin.job.Progress;
import dev.quoin.job.Proof;
import dev.quoin.job.ProofSummary;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** {@code quoin proof JOB}. */
final class ProofCommand extends JobCommand<ProofSummary> {
    ProofCommand(Console console, Path workingFolder) {
        super(console, workingFolder);
    }

    @Override
    Usage usage() {
        return usage(
                        "Draws every piece of a job for the customer to approve: proofs/NAME.html here, or --out FILE, which is "
                                + "written as PDF if its name ends in .pdf.")
                .examples(
                        "quoin proof sample-orders/harbour-tags",
                        "quoin proof sample-orders/orchard-fair --skip-bad-rows \\",
                        "    --show \"Order No,Name,Line 2\" --out proof.pdf");
    }

    @Override
    Outcome<ProofSummary> work(JobSettings settings, Progress progress, Problems problems) throws IOException {
        return new Proof(settings, progress).run(problems);
    }

    @Override
    String json(ProofSummary proof, List<Problem> problems) {
        return "{\"proof\":" + SummaryText.quote(proof.file().toString()) + ",\"pieces\":" + proof.pieces()
                + ",\"problems\":" + SummaryText.list(problems) + "}";
    }

    @Override
    List<String> lines(ProofSummary proof, List<Problem> problems) {
        return List.of(SummaryText.relative(proof.file(), workingFolder) + "  "
                + (proof.pieces() == 1 ? "1 piece" : proof.pieces() + " pieces") + ", for the customer to approve");
    }
}
