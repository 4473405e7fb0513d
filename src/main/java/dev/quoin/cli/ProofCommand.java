package dev.quoin.cli;

import dev.quoin.job.JobSettings;
import dev.quoin.job.Outcome;
import dev.quoin.job.Proof;
import dev.quoin.job.ProofSummary;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code quoin proof JOB}. */
@Command(
        name = "proof",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Draws every piece of a job for the customer to approve: proofs/NAME.html here, or --out FILE, which is written as "
                    + "PDF if its name ends in .pdf.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  quoin proof sample-orders/harbour-tags",
            "  quoin proof sample-orders/orchard-fair --skip-bad-rows --show \"Order No,Name,Line 2\" --out proof.pdf"
        })
final class ProofCommand implements Callable<Integer> {
    private final Console console;
    private final Path workingFolder;

    @Mixin
    private JobParameter job = new JobParameter();

    @Mixin
    private OutputOptions output = new OutputOptions();

    ProofCommand(Console console, Path workingFolder) {
        this.console = console;
        this.workingFolder = workingFolder;
    }

    @Override
    public Integer call() throws IOException {
        Problems problems = new Problems();
        JobSettings settings = job.settings(workingFolder, problems);
        Outcome<ProofSummary> outcome;
        try (ProgressLine progress = new ProgressLine(console.isTerminal() && !output.quiet())) {
            outcome = new Proof(settings, progress).run(problems);
        }
        console.complain(outcome.problems());
        if (outcome.result().isEmpty()) {
            console.complain(SummaryText.refused(outcome.problems()));
            return ExitStatus.BAD_INPUT.code();
        }
        ProofSummary proof = outcome.result().get();
        if (output.json()) {
            console.say("{\"proof\":" + SummaryText.quote(proof.file().toString()) + ",\"pieces\":" + proof.pieces()
                    + ",\"problems\":" + SummaryText.list(outcome.problems()) + "}");
        } else if (!output.quiet()) {
            console.say(SummaryText.relative(proof.file(), workingFolder) + "  "
                    + (proof.pieces() == 1 ? "1 piece" : proof.pieces() + " pieces") + ", for the customer to approve");
        }
        return ExitStatus.DONE.code();
    }
}
