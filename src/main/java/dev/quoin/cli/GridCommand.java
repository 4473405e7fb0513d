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
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** {@code quoin grid}: a plate of swatches, and the recipe of the one that is chosen. */
final class GridCommand extends Command {
    private final Option<String> recipe = Option.text("--recipe", "NAME", "The recipe whose step is tried.");
    private final Option<Integer> step = Option.integer("--step", "NUMBER", "The step to try; if not given, 1.");
    private final Option<List<String>> vary =
            Option.texts("--vary", "WHAT=FIRST:LAST:HOW-MANY", "Varies across; given twice, down too.");
    private final Option<String> jig = Option.text("--jig", "FILE", "The jig that holds the piece to try on.");
    private final Option<String> slot =
            Option.text("--slot", "SLOT", "Its slot; if not given, the first that is usable.");
    private final Option<String> lens =
            Option.text("--lens", "NAME", "The lens; if not given, the one that the recipe names.");
    private final Option<Double> swatchMm =
            Option.decimal("--swatch-mm", "MM", "The side of a swatch; if not given, 6.");
    private final Option<String> blank = Option.text("--blank", "NAME", "The blank to try on.");
    private final Option<String> shop =
            Option.text("--shop", "DIR", "Your shop's tables; if not given, invented examples.");
    private final Option<String> out =
            Option.text("--out", "DIR", "The run folder to write; if not given, runs/grid here.");
    private final Option<Boolean> splitSteps = Option.flag("--split-steps", "Write a plate file for each swatch.");
    private final Option<String> adopt = Option.text("--adopt", "RUN", "The trial from which a swatch is taken.");
    private final Option<String> swatch = Option.text("--swatch", "SWATCH", "The swatch to take, such as C4.");
    private final Option<String> as = Option.text("--as", "NAME", "What the new recipe is to be called.");

    GridCommand(Console console, Path workingFolder) {
        super(console, workingFolder);
    }

    @Override
    Usage usage() {
        return new Usage(
                        this,
                        "Prepares a plate of labelled swatches, each with settings of its own, to try a recipe's step on scrap; or "
                                + "adds the settings of the swatch that turned out best to your recipes.")
                .takes(recipe, step, vary, jig, slot, lens, swatchMm, blank, shop, out, splitSteps)
                .takes(adopt, swatch, as)
                .takes(output.options())
                .notes(
                        "What may vary: power, speed, frequency, pulse, spacing, angle, passes;",
                        "as FIRST:LAST:HOW-MANY.")
                .examples(
                        "quoin grid --recipe aluminium-tag --vary speed=500:2000:6 \\",
                        "    --vary power=20:80:4 --jig trial-plate.csv --lens short-100 \\",
                        "    --out runs/trial",
                        "quoin grid --adopt runs/trial --swatch C4 --as aluminium-bright --shop my-shop");
    }

    @Override
    public Integer call() throws IOException {
        return adopt.given().isPresent() ? adopt(path(adopt.value())) : prepare();
    }

    private int adopt(Path run) throws IOException {
        Path tables = path(needed(shop));
        String name = needed(as);
        Outcome<Recipe> outcome = new AdoptSwatch(run, needed(swatch), name, tables).run();
        console.complain(outcome.problems());
        if (outcome.result().isEmpty()) {
            return ExitStatus.BAD_INPUT.code();
        }
        if (output.json()) {
            console.say("{\"recipe\":" + SummaryText.quote(name) + ",\"steps\":"
                    + outcome.result().get().steps().size() + "}");
        } else if (!output.quiet()) {
            console.say("recipe " + name + " added to " + shop.value() + "/recipes.csv");
        }
        return ExitStatus.DONE.code();
    }

    private int prepare() throws IOException {
        double side = swatchMm.orElse(6.0);
        if (side < 1 || side > 100) {
            throw swatchMm.wrong("--swatch-mm takes 1 to 100");
        }
        Map<JobKey, String> settings = new EnumMap<>(JobKey.class);
        blank.given().ifPresent(name -> settings.put(JobKey.BLANK, name));
        settings.put(JobKey.SPLIT_STEPS, String.valueOf(splitSteps.orElse(false)));
        Path folder = path(out.orElse("runs/grid"));
        GridRequest request = new GridRequest(
                needed(recipe),
                step.orElse(1),
                vary.orElse(List.of()),
                path(needed(jig)),
                slot.given(),
                lens.given(),
                side,
                shop.given().map(this::path),
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

    private static String needed(Option<String> option) {
        return option.given().orElseThrow(() -> option.wrong("missing option " + option.name()));
    }
}
