package dev.quoin.cli;

import dev.quoin.job.Calibrate;
import dev.quoin.job.Outcome;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** {@code quoin calibrate RUN... --out machine.csv}. */
final class CalibrateCommand extends Command {
    private final Parameter<List<String>> runs = Parameter.texts("RUN", "The run folders.");
    private final Option<String> out = Option.text("--out", "FILE", "The machine table to write; never over one.")
            .required();

    CalibrateCommand(Console console, Path workingFolder) {
        super(console, workingFolder);
    }

    @Override
    Usage usage() {
        return new Usage(
                        this,
                        "Learns the machine's delays and handling from the times recorded with quoin done --took, and writes a "
                                + "new machine.csv with them. Time a plate from the first blank into the jig to the last piece "
                                + "out of it.")
                .takes(runs, out)
                .takes(output.options())
                .examples("quoin calibrate runs/harbour-tags runs/orchard-fair --out shop/machine-new.csv");
    }

    @Override
    public Integer call() throws IOException {
        List<Path> folders = runs.value().stream().map(this::path).toList();
        Outcome<Calibrate.Learnt> outcome = new Calibrate(folders, path(out.value())).run();
        console.complain(outcome.problems());
        if (outcome.result().isEmpty()) {
            return ExitStatus.BAD_INPUT.code();
        }
        if (output.json()) {
            console.say(CalibrationText.json(outcome.result().get(), out.value()));
        } else if (!output.quiet()) {
            CalibrationText.lines(outcome.result().get(), out.value()).forEach(console::say);
        }
        return ExitStatus.DONE.code();
    }
}
