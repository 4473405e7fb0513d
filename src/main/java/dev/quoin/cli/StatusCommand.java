package dev.quoin.cli;

import dev.quoin.job.Outcome;
import dev.quoin.job.Status;
import java.io.IOException;
import java.nio.file.Path;

/** {@code quoin status RUN}. */
final class StatusCommand extends Command {
    private final Parameter<String> run = Parameter.text("RUN", "The run folder.");

    StatusCommand(Console console, Path workingFolder) {
        super(console, workingFolder);
    }

    @Override
    Usage usage() {
        return new Usage(
                        this,
                        "Says how far the work on a run is: plates done, items failed and redone, by reason, and the hours left.")
                .takes(run)
                .takes(output.options())
                .examples("quoin status runs/orchard-fair");
    }

    @Override
    public Integer call() throws IOException {
        Outcome<Status.Report> outcome = new Status(path(run.value())).run();
        console.complain(outcome.problems());
        Status.Report report = outcome.result().orElseThrow();
        if (output.json()) {
            console.say(RecordText.json(report));
        } else if (!output.quiet()) {
            RecordText.lines(report).forEach(console::say);
        }
        return ExitStatus.DONE.code();
    }
}
