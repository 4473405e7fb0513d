package dev.quoin.cli;

import dev.quoin.job.AdoptSwatch;
import dev.quoin.job.GridRequest;
import dev.quoin.job.JobKey;
import dev.quoin.job.Outcome;
import dev.quoin.job.RunSummary;
import dev.quoin.job.SettingsTrial;
import dev.quoin.shop.Recipe;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code quoin grid}: a plate of swatches, and the recipe of the one that is chosen. */
@Command(
        name = "grid",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Prepares a plate of labelled swatches, each with settings of its own, to try a recipe's step on scrap; or adds "
                    + "the settings of the swatch that turned out best to your recipes.",
            ""
        },
        footer = {
            "",
            "What may vary: power, speed, frequency, pulse, spacing, angle, passes; as FIRST:LAST:HOW-MANY.",
            "",
            "Examples:",
            "  quoin grid --recipe aluminium-tag --vary speed=500:2000:6 --vary power=20:80:4 --jig trial-plate.csv "
                    + "--lens short-100 --out runs/trial",
            "  quoin grid --adopt runs/trial --swatch C4 --as aluminium-bright --shop my-shop"
        })
final class GridCommand implements Callable<Integer> {
    private final Console console;
    private final Path workingFolder;

    @Spec
    private CommandSpec spec;

    @Option(names = "--recipe", paramLabel = "NAME", description = "The recipe whose step is tried.")
    private Optional<String> recipe = Optional.empty();

    @Option(names = "--step", paramLabel = "NUMBER", description = "The step to try; if not given, 1.")
    private int step = 1;

    @Option(
            names = "--vary",
            paramLabel = "WHAT=FIRST:LAST:HOW-MANY",
            description = "Varies across; given twice, down too.")
    private List<String> vary = new ArrayList<>();

    @Option(names = "--jig", paramLabel = "FILE", description = "The jig that holds the piece to try on.")
    private Optional<String> jig = Optional.empty();

    @Option(names = "--slot", paramLabel = "SLOT", description = "Its slot; if not given, the first that is usable.")
    private Optional<String> slot = Optional.empty();

    @Option(
            names = "--lens",
            paramLabel = "NAME",
            description = "The lens; if not given, the one that the recipe names.")
    private Optional<String> lens = Optional.empty();

    @Option(names = "--swatch-mm", paramLabel = "MM", description = "The side of a swatch; if not given, 6.")
    private double swatchMm = 6;

    @Option(names = "--blank", paramLabel = "NAME", description = "The blank to try on.")
    private Optional<String> blank = Optional.empty();

    @Option(names = "--shop", paramLabel = "DIR", description = "Your shop's tables; if not given, invented examples.")
    private Optional<String> shop = Optional.empty();

    @Option(names = "--out", paramLabel = "DIR", description = "The run folder to write; if not given, runs/grid here.")
    private String out = "runs/grid";

    @Option(names = "--split-steps", description = "Write a plate file for each swatch.")
    private boolean splitSteps;

    @Option(names = "--adopt", paramLabel = "RUN", description = "The trial from which a swatch is taken.")
    private Optional<String> adopt = Optional.empty();

    @Option(names = "--swatch", paramLabel = "SWATCH", description = "The swatch to take, such as C4.")
    private Optional<String> swatch = Optional.empty();

    @Option(names = "--as", paramLabel = "NAME", description = "What the new recipe is to be called.")
    private Optional<String> as = Optional.empty();

    @Mixin
    private OutputOptions output = new OutputOptions();

    GridCommand(Console console, Path workingFolder) {
        this.console = console;
        this.workingFolder = workingFolder;
    }

    @Override
    public Integer call() throws IOException {
        return adopt.isPresent() ? adopt(path(adopt.get())) : prepare();
    }

    private int adopt(Path run) throws IOException {
        Path tables = path(needed(shop, "--shop"));
        String name = needed(as, "--as");
        Outcome<Recipe> outcome = new AdoptSwatch(run, needed(swatch, "--swatch"), name, tables).run();
        console.complain(outcome.problems());
        if (outcome.result().isEmpty()) {
            return ExitStatus.BAD_INPUT.code();
        }
        if (output.json()) {
            console.say("{\"recipe\":" + SummaryText.quote(name) + ",\"steps\":"
                    + outcome.result().get().steps().size() + "}");
        } else if (!output.quiet()) {
            console.say("recipe " + name + " added to " + needed(shop, "--shop") + "/recipes.csv");
        }
        return ExitStatus.DONE.code();
    }

    private int prepare() throws IOException {
        if (swatchMm < 1 || swatchMm > 100) {
            throw new ParameterException(spec.commandLine(), "--swatch-mm takes 1 to 100");
        }
        Map<JobKey, String> settings = new EnumMap<>(JobKey.class);
        blank.ifPresent(name -> settings.put(JobKey.BLANK, name));
        settings.put(JobKey.SPLIT_STEPS, Boolean.toString(splitSteps));
        Path folder = path(out);
        GridRequest request = new GridRequest(
                needed(recipe, "--recipe"),
                step,
                vary,
                path(needed(jig, "--jig")),
                slot,
                lens,
                swatchMm,
                shop.map(this::path),
                folder,
                settings);
        Outcome<RunSummary> outcome;
        try (ProgressLine progress = new ProgressLine(console.isTerminal() && !output.quiet())) {
            outcome = new SettingsTrial(request, progress).run();
        }
        console.complain(outcome.problems());
        if (outcome.result().isEmpty()) {
            console.complain(SummaryText.refused(outcome.problems()));
            return ExitStatus.BAD_INPUT.code();
        }
        if (output.json()) {
            console.say(SummaryText.json(outcome.result().get(), outcome.problems()));
        } else if (!output.quiet()) {
            SummaryText.lines("swatches", outcome.result().get(), outcome.problems(), workingFolder)
                    .forEach(console::say);
            console.say("to fill in  " + workingFolder.relativize(SettingsTrial.results(folder)));
        }
        return ExitStatus.DONE.code();
    }

    private Path path(String text) {
        return workingFolder.resolve(text).normalize();
    }

    private String needed(Optional<String> value, String option) {
        return value.orElseThrow(() -> new ParameterException(spec.commandLine(), "missing option " + option));
    }
}
