package dev.quoin.cli;

import dev.quoin.job.Done;
import dev.quoin.job.Outcome;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.OptionalDouble;
import java.util.SortedSet;

/** {@code quoin done RUN --plate 3 --took 7:41 --failed 4,9 --reason slipped}. */
final class DoneCommand extends Command {
    private final Parameter<String> run = Parameter.text("RUN", "The run folder.");
    private final Option<Integer> plate = Option.integer("--plate", "NUMBER", "The plate that is done.");
    private final Option<Integer> reprint = Option.integer("--reprint", "NUMBER", "The reprint that is done.");
    private final Option<String> took =
            Option.text("--took", "TIME", "Loading and marking by the clock: m:ss or h:mm:ss.");
    private final Option<String> failed = Option.text("--failed", "NUMBERS", "The items that failed, such as 4,9.");
    private final Option<String> reason = Option.text("--reason", "TEXT", "Why they failed.");

    DoneCommand(Console console, Path workingFolder) {
        super(console, workingFolder);
    }

    @Override
    Usage usage() {
        return new Usage(
                        this,
                        "Records that a plate or a reprint is done: the time it took by the clock, and the items that failed.")
                .takes(run)
                .takesOneOf(plate, reprint)
                .takes(took, failed, reason)
                .takes(output.options())
                .examples(
                        "quoin done runs/orchard-fair --plate 3 --took 7:41",
                        "quoin done runs/orchard-fair --plate 3 --failed 54,57 --reason slipped",
                        "quoin done runs/orchard-fair --reprint 1");
    }

    @Override
    public Integer call() throws IOException {
        String why = reason.orElse("");
        SortedSet<Integer> items = NumberList.read(failed, "item numbers such as 4,9");
        if (!why.isEmpty() && failed.orElse("").isEmpty()) {
            throw reason.wrong("--reason is for items that failed; name them with --failed");
        }
        Outcome<Done.Recorded> outcome =
                new Done(path(run.value()), loading(), seconds(), items, why, Clock.systemUTC()).run();
        console.complain(outcome.problems());
        if (outcome.result().isEmpty()) {
            return ExitStatus.BAD_INPUT.code();
        }
        if (output.json()) {
            console.say(RecordText.json(outcome.result().get()));
        } else if (!output.quiet()) {
            console.say(RecordText.line(outcome.result().get()));
        }
        return ExitStatus.DONE.code();
    }

    private Done.Loading loading() {
        int again = reprint.orElse(0);
        return again > 0 ? new Done.Loading(true, again) : new Done.Loading(false, plate.orElse(0));
    }

    private OptionalDouble seconds() {
        String text = took.orElse("");
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble seconds = ClockTime.parse(text);
        if (seconds.isEmpty()) {
            throw took.wrong("--took '" + text + "' is no time; write minutes and seconds as 7:41, or 1:07:41");
        }
        return seconds;
    }
}
