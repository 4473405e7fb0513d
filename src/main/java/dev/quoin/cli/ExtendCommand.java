package dev.quoin.cli;

import dev.quoin.job.Extend;
import dev.quoin.job.Outcome;
import dev.quoin.job.Progress;
import dev.quoin.problem.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.SortedSet;

/** {@code quoin extend RUN NEW_ORDER.csv}. */
final class ExtendCommand extends Command {
    private final Parameter<String> run = Parameter.text("RUN", "The run folder.");
    private final Parameter<String> order =
            Parameter.text("NEW_ORDER.csv", "The order as it is now, with all its rows.");
    private final Option<String> added = Option.text(
            "--add", "LINES", "The lines of the new order on which the added rows start, such as 12,40-44.");

    ExtendCommand(Console console, Path workingFolder) {
        super(console, workingFolder);
    }

    @Override
    Usage usage() {
        return new Usage(
                        this,
                        "Prepares the rows that were added to the order of a run: new plates, numbered on, with a sheet of their "
                                + "own. What was prepared stays as it is. If rows were changed or are gone, nothing is written "
                                + "unless you say with --add which rows are added.")
                .takes(run, order, added)
                .takes(output.options())
                .examples(
                        "quoin extend runs/orchard-fair order.csv",
                        "quoin extend runs/orchard-fair order.csv --add 560-574");
    }

    @Override
    public Integer call() throws IOException {
        SortedSet<Integer> lines = NumberList.read(added, "lines such as 12,40-44");
        Outcome<Extend.Extension> outcome =
                new Extend(path(run.value()), path(order.value()), lines, Progress.SILENT).run();
        console.complain(outcome.problems());
        if (output.json()) {
            console.say(RecordText.jsonOfExtension(outcome));
        } else if (outcome.result().isPresent() && !output.quiet()) {
            RecordText.lines(outcome.result().get(), workingFolder).forEach(console::say);
        }
        boolean failed = outcome.problems().stream().anyMatch(Problem::isError);
        return outcome.result().isEmpty() && failed ? ExitStatus.BAD_INPUT.code() : ExitStatus.DONE.code();
    }
}
