package dev.quoin.cli;

import dev.quoin.job.Outcome;
import dev.quoin.job.Verify;
import dev.quoin.verify.Proof;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code quoin verify RUN}. */
@Command(
        name = "verify",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Reads a run back and proves it: no file changed, missing or added; every item that the order asks for on "
                    + "exactly one slot of one plate, its marks in its pocket and in the lens's reach; counts and times "
                    + "add up; reprints equal to their originals. Run it before starting the laser.",
            ""
        },
        footer = {"", "Example:", "  quoin verify runs/orchard-fair"})
final class VerifyCommand implements Callable<Integer> {
    private final Console console;
    private final Path workingFolder;

    @Parameters(paramLabel = "RUN", description = "The run folder.")
    private String run;

    @Mixin
    private OutputOptions output = new OutputOptions();

    VerifyCommand(Console console, Path workingFolder) {
        this.console = console;
        this.workingFolder = workingFolder;
    }

    @Override
    public Integer call() throws IOException {
        Outcome<Proof> outcome = new Verify(workingFolder.resolve(run).normalize()).run();
        console.complain(outcome.problems());
        if (output.json()) {
            console.say(RecordText.json(outcome));
        } else if (outcome.result().isPresent() && !output.quiet()) {
            console.say(RecordText.line(outcome.result().get()));
        } else if (outcome.result().isEmpty()) {
            console.complain("not proven: " + SummaryText.count(outcome.problems()));
        }
        return outcome.result().isPresent() ? ExitStatus.DONE.code() : ExitStatus.BAD_INPUT.code();
    }
}
