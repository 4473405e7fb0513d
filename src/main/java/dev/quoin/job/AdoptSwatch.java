package dev.quoin.job;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Suggestion;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.RecipeRows;
import dev.quoin.shop.Shop;
import dev.quoin.shop.ShopFiles;
import dev.quoin.shop.ShopReader;
import dev.quoin.shop.Step;
import dev.quoin.store.Run;
import dev.quoin.store.SettingsFile;
import dev.quoin.table.Table;
import dev.quoin.table.TableRow;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Adds the settings of a swatch to the user's recipes: the recipe that was tried, with the step that was tried as the swatch
 * was marked, under a new name.
 */
public final class AdoptSwatch {
    private final Path folder;
    private final String swatch;
    private final String name;
    private final Path shop;
    private final Problems problems = new Problems();

    /**
     * Sets up.
     *
     * @param folder of the trial's run
     * @param swatch such as {@code C4}
     * @param name of the new recipe
     * @param shop the user's folder of tables
     */
    public AdoptSwatch(Path folder, String swatch, String name, Path shop) {
        this.folder = folder;
        this.swatch = swatch;
        this.name = name;
        this.shop = shop;
    }

    /**
     * Adds it.
     *
     * @return the recipe; nothing, and the table as it was, where there are errors
     * @throws IOException if the run or the table cannot be read, or the table cannot be written
     */
    public Outcome<Recipe> run() throws IOException {
        Optional<Recipe> recipe = recipe(Run.open(folder));
        if (recipe.isPresent()) {
            SettingsFile.change(shop.resolve(ShopFiles.RECIPES), content -> extended(content, recipe.get()));
        }
        return new Outcome<>(problems.hasErrors() ? Optional.empty() : recipe, problems.sorted());
    }

    private Optional<Recipe> recipe(Run run) throws IOException {
        Table items = run.table("items.csv");
        if (!items.headers().containsAll(GridFiles.ORDER)) {
            problems.error(Place.of(run.name()), "no settings trial", "name a run that quoin grid made");
            return Optional.empty();
        }
        Map<String, TableRow> swatches = new LinkedHashMap<>();
        items.rows().forEach(row -> swatches.put(cell(items, row, "swatch"), row));
        swatches.remove("");
        Optional<TableRow> row = Optional.ofNullable(swatches.get(swatch));
        if (row.isEmpty()) {
            problems.error(
                    Place.of(run.name()),
                    "the trial has no swatch '" + swatch + "'",
                    Suggestion.remedy(swatch, swatches.keySet()));
            return Optional.empty();
        }
        RunShop used = RunShop.of(run, 1);
        Recipe trial = used.recipe(Swatches.RECIPE);
        Recipe tried = used.recipe(cell(items, row.get(), "tried_recipe"));
        int number = Integer.parseInt(cell(items, row.get(), "tried_step"));
        Step marked = trial.steps().stream()
                .filter(step -> step.process().equals(Swatches.process(swatch)))
                .findFirst()
                .orElseThrow(() -> new IOException("the run has no step for swatch " + swatch));
        List<Step> steps = tried.steps().stream()
                .map(step -> step.number() == number
                        ? Swatches.named(marked, number, step.process(), "Swatch " + swatch + " of " + run.name())
                        : step)
                .toList();
        return Optional.of(new Recipe(name, steps, trial.lens(), tried.material(), tried.place()));
    }

    private static String cell(Table table, TableRow row, String column) {
        return row.cells().get(table.headers().indexOf(column));
    }

    /** The table with the recipe at its end, if all of it can be read so; else as it was. */
    private byte[] extended(byte[] content, Recipe recipe) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>(ShopFiles.of(shop).files());
        String origin = ShopFiles.of(shop).origin();
        Problems before = new Problems();
        files.put(ShopFiles.RECIPES, content);
        Optional<Shop> now = ShopReader.read(new ShopFiles(origin, files), before);
        if (now.isEmpty()) {
            before.sorted().forEach(problems::add);
            return content;
        }
        if (now.get().recipes().containsKey(name)) {
            problems.error(Place.of("--as"), "recipe '" + name + "' is there already", "choose another name");
            return content;
        }
        byte[] after = RecipeAppender.append(content, recipe);
        files.put(ShopFiles.RECIPES, after);
        Problems found = new Problems();
        Optional<Recipe> read = ShopReader.read(new ShopFiles(origin, files), found)
                .flatMap(one -> Optional.ofNullable(one.recipes().get(name)));
        if (read.isPresent() && RecipeRows.sameSettings(read.get(), recipe)) {
            return after;
        }
        found.sorted().stream().filter(problem -> problem.isError()).forEach(problems::add);
        if (!problems.hasErrors()) {
            problems.error(
                    Place.of(origin + "/" + ShopFiles.RECIPES),
                    "the table has no columns for all settings of the swatch",
                    "give it the columns " + String.join(",", RecipeRows.COLUMNS));
        }
        return content;
    }
}
