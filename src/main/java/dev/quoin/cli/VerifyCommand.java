package dev.quoin.cli;

import dev.quoin.job.Outcome;
import dev.quoin.job.Verify;
import dev.quoin.verify.Proof;
import java.io.IOException;
import java.nio.file.Path;

/** {@code quoin verify RUN}. */
final class VerifyCommand extends Command {
    private final Parameter<String> run = Parameter.text("RUN", "The run folder.");

    VerifyCommand(Console console, Path workingFolder) {
        super(console, workingFolder);
    }

    @Override
    Usage usage() {
        return new Usage(
                        this,
                        "Reads a run back and proves it: no file changed, missing or added; every item that the order asks for on "
                                + "exactly one slot of one plate, its marks in its pocket and in the lens's reach; counts and times "
                                + "add up; reprints equal to their originals. Run it before starting the laser.")
                .takes(run)
                .takes(output.options())
                .examples("quoin verify runs/orchard-fair");
    }

    @Override
    public Integer call() throws IOException {
        Outcome<Proof> outcome = new Verify(path(run.value())).run();
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
