package dev.quoin.cli;

import dev.quoin.job.Calibrate;
import dev.quoin.job.Outcome;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code quoin calibrate RUN... --out machine.csv}. */
@Command(
        name = "calibrate",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Learns the machine's delays and handling from the times recorded with quoin done --took, and writes a new "
                    + "machine.csv with them. Time a plate from the first blank into the jig to the last piece out of it.",
            ""
        },
        footer = {"", "Example:", "  quoin calibrate runs/harbour-tags runs/orchard-fair --out shop/machine-new.csv"})
final class CalibrateCommand implements Callable<Integer> {
    private final Console console;
    private final Path workingFolder;

    @Parameters(paramLabel = "RUN", arity = "1..*", description = "The run folders.")
    private List<String> runs;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "FILE",
            description = "The machine table to write; never over one.")
    private String out;

    @Mixin
    private OutputOptions output = new OutputOptions();

    CalibrateCommand(Console console, Path workingFolder) {
        this.console = console;
        this.workingFolder = workingFolder;
    }

    @Override
    public Integer call() throws IOException {
        List<Path> folders =
                runs.stream().map(run -> workingFolder.resolve(run).normalize()).toList();
        Outcome<Calibrate.Learnt> outcome =
                new Calibrate(folders, workingFolder.resolve(out).normalize()).run();
        console.complain(outcome.problems());
        if (outcome.result().isEmpty()) {
            return ExitStatus.BAD_INPUT.code();
        }
        if (output.json()) {
            console.say(CalibrationText.json(outcome.result().get(), out));
        } else if (!output.quiet()) {
            CalibrationText.lines(outcome.result().get(), out).forEach(console::say);
        }
        return ExitStatus.DONE.code();
    }
}
