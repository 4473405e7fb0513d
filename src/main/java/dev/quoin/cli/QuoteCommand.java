package dev.quoin.cli;

import dev.quoin.job.JobSettings;
import dev.quoin.job.Outcome;
import dev.quoin.job.Quotation;
import dev.quoin.job.Quote;
import dev.quoin.problem.Problems;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code quoin quote JOB}. */
@Command(
        name = "quote",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Compares what a job takes through each lens of the shop, and on other jigs, says which to take, and writes "
                    + "nothing.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  quoin quote sample-orders/orchard-fair",
            "  quoin quote sample-orders/harbour-tags --other-jig my-tray.svg"
        })
final class QuoteCommand implements Callable<Integer> {
    private final Console console;
    private final Path workingFolder;

    @Mixin
    private JobParameter job = new JobParameter();

    @Option(
            names = "--other-jig",
            paramLabel = "FILE",
            description = "A jig to compare with the job's own; may be given several times.")
    private List<String> otherJigs = new ArrayList<>();

    @Mixin
    private OutputOptions output = new OutputOptions();

    QuoteCommand(Console console, Path workingFolder) {
        this.console = console;
        this.workingFolder = workingFolder;
    }

    @Override
    public Integer call() throws IOException {
        Problems problems = new Problems();
        JobSettings settings = job.settings(workingFolder, problems);
        Outcome<Quotation> outcome;
        try (ProgressLine progress = new ProgressLine(console.isTerminal() && !output.quiet())) {
            outcome = new Quote(settings, otherJigs, progress).run(problems);
        }
        console.complain(outcome.problems());
        if (outcome.result().isEmpty()) {
            return ExitStatus.BAD_INPUT.code();
        }
        Quotation quotation = outcome.result().get();
        if (output.json()) {
            console.say(QuoteText.json(quotation, outcome.problems()));
        } else if (!output.quiet()) {
            QuoteText.lines(quotation).forEach(console::say);
        }
        return (quotation.choice().isPresent() ? ExitStatus.DONE : ExitStatus.BAD_INPUT).code();
    }
}
