package dev.quoin.cli;

import dev.quoin.job.HeadStart;
import dev.quoin.job.Outcome;
import dev.quoin.job.Reprint;
import dev.quoin.job.ReprintRequest;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;

/** {@code quoin reprint RUN --item 37,52-54}. */
final class ReprintCommand extends Command {
    /** Stands for a file of failed items: take them from the run's record. */
    private static final String LOG = "log";

    private final Parameter<String> run = Parameter.text("RUN", "The run folder.");
    private final Option<String> items = Option.text("--item", "NUMBERS", "The items, such as 37,52-54.");
    private final Option<String> plates =
            Option.text("--plate", "NUMBERS", "All items of these plates, such as 3 or 3,7-8.");
    private final Option<String> failed = Option.text(
            "--failed",
            "FILE",
            "The items in the column 'item' of a CSV; or, if FILE is 'log', those that the run's record has as failed and "
                    + "not yet reprinted.");
    private final Option<Boolean> pack =
            Option.flag("--pack", "Gather the items of each group in free slots, on as few plates as possible.");
    private final Option<List<String>> onlySteps = Option.list(
            "--only-steps", "STEPS", "Repeat only these steps, by number or process. The pieces must not have moved.");
    private final Option<String> slot =
            Option.text("--slot", "SLOT", "Mark the one item in this slot instead of its own.");
    private final Option<List<String>> plateFormats = Option.list(
            "--plate-format",
            "KIND",
            "Write the plate as pdf or dxf too, beside the svg; if not given, as the run was written.");
    private final Option<List<String>> sheets = Option.list(
            "--sheet", "KIND", "Write the sheet as pdf too, beside the html; if not given, as the run was written.");
    private final Option<String> reason =
            Option.text("--reason", "TEXT", "Why; kept in the run's log and printed on the sheet.");

    private HeadStart ahead = HeadStart.none();

    ReprintCommand(Console console, Path workingFolder) {
        super(console, workingFolder);
    }

    @Override
    Usage usage() {
        return new Usage(
                        this,
                        "Writes files that mark failed items again, each in its own slot, with a small sheet; one file for each "
                                + "plate. With --pack the items are gathered on as few fresh plates as possible.")
                .takes(run, items, plates, failed, pack, onlySteps, slot, plateFormats, sheets, reason)
                .takes(output.options())
                .examples(
                        "quoin reprint runs/harbour-tags --item 7 --reason slipped",
                        "quoin reprint runs/orchard-fair --item 37,52-54",
                        "quoin reprint runs/harbour-tags --item 7 --slot B2",
                        "quoin reprint runs/orchard-fair --failed log --pack",
                        "quoin reprint runs/orchard-fair --plate 3 --only-steps outline");
    }

    @Override
    void begin() {
        ahead = HeadStart.toReprint();
    }

    @Override
    public Integer call() throws IOException {
        Path folder = path(run.value());
        Outcome<List<Reprint.Written>> outcome = new Reprint(folder, request(), Clock.systemUTC(), ahead).run();
        console.complain(outcome.problems());
        if (outcome.result().isEmpty()) {
            return ExitStatus.BAD_INPUT.code();
        }
        if (output.json()) {
            console.say(SummaryText.reprints(outcome.result().get()));
        } else if (!output.quiet()) {
            outcome.result().get().forEach(written -> console.say(SummaryText.line(written, folder, workingFolder)));
        }
        return ExitStatus.DONE.code();
    }

    private ReprintRequest request() {
        SortedSet<Integer> itemNumbers = numbers(items);
        Optional<String> source = failed.given();
        boolean fromLog = source.equals(Optional.of(LOG));
        List<String> steps = stripped(onlySteps);
        ReprintRequest request = new ReprintRequest(
                itemNumbers,
                numbers(plates),
                fromLog ? Optional.empty() : source.map(workingFolder::resolve),
                fromLog,
                slot.given(),
                pack.orElse(false),
                steps,
                stripped(plateFormats),
                stripped(sheets),
                reason.orElse(""));
        boolean noPlates = plates.orElse("").isEmpty();
        if (items.orElse("").isEmpty() && noPlates && source.isEmpty()) {
            throw items.wrong("say which items: --item, --plate or --failed");
        }
        boolean moved = request.slot().isPresent() || request.pack();
        if (request.slot().isPresent()
                && (itemNumbers.size() != 1 || !noPlates || source.isPresent() || request.pack())) {
            throw slot.wrong("--slot takes one --item at a time, and no --pack");
        }
        if (!steps.isEmpty() && moved) {
            throw onlySteps.wrong(
                    "--only-steps is for pieces that have not moved, so it goes with neither --slot nor --pack");
        }
        return request;
    }

    private static SortedSet<Integer> numbers(Option<String> option) {
        return NumberList.read(option, "numbers such as 37,52-54");
    }

    private static List<String> stripped(Option<List<String>> option) {
        return option.orElse(List.of()).stream().map(String::strip).toList();
    }
}
