package dev.quoin.job;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.Decimals;
import dev.quoin.geometry.Path;
import dev.quoin.plate.PocketRoom;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Suggestion;
import dev.quoin.shop.Jig;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.Shop;
import dev.quoin.shop.ShopFiles;
import dev.quoin.shop.ShopReader;
import dev.quoin.shop.Slot;
import dev.quoin.store.NewTable;
import dev.quoin.store.ScratchFolder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Prepares a plate of swatches on which settings are tried: as an order of its own, which goes the way of every order. Beside
 * the run stands a table to fill in.
 */
public final class SettingsTrial {
    private static final int MOST_VARIED = 2;

    private final GridRequest request;
    private final Progress progress;
    private final Problems problems = new Problems();

    public SettingsTrial(GridRequest request, Progress progress) {
        this.request = request;
        this.progress = progress;
    }

    /** The table to fill in that stands beside a run. */
    public static java.nio.file.Path results(java.nio.file.Path run) {
        return run.resolveSibling(run.getFileName() + "-swatches.csv");
    }

    /**
     * Prepares it.
     *
     * @return what the run comes to, its items the swatches, all on one blank; nothing, and nothing written, where there are errors
     * @throws IOException if a file is missing or cannot be read, or the run or the table cannot be written
     */
    public Outcome<RunSummary> run() throws IOException {
        NewTable.checkFree(results(request.out()));
        ShopFiles files =
                request.shop().isPresent() ? ShopFiles.of(request.shop().get()) : ShopFiles.builtIn();
        Optional<Shop> shop = ShopReader.read(files, problems);
        Optional<GridFiles> grid = shop.flatMap(this::swatches).flatMap(this::lay);
        if (grid.isEmpty() || problems.hasErrors()) {
            return new Outcome<>(Optional.empty(), problems.sorted());
        }
        try (ScratchFolder scratch = ScratchFolder.create()) {
            for (Map.Entry<String, byte[]> file :
                    grid.get().all(files, shop.get().machine()).entrySet()) {
                scratch.write(file.getKey(), file.getValue());
            }
            Outcome<RunSummary> outcome = new Prepare(settings(scratch.folder(), grid.get()), progress).run(problems);
            if (outcome.result().isPresent()) {
                NewTable.write(results(request.out()), grid.get().results().getBytes(StandardCharsets.UTF_8));
            }
            int count = grid.get().swatches().all().size();
            return new Outcome<>(
                    outcome.result().map(summary -> summary.onOnePiece(count)),
                    outcome.problems().stream()
                            .map(problem -> known(problem, files))
                            .distinct()
                            .toList());
        }
    }

    private JobSettings settings(java.nio.file.Path folder, GridFiles grid) throws IOException {
        Map<JobKey, String> given = new EnumMap<>(JobKey.class);
        given.putAll(request.settings());
        given.put(JobKey.TEMPLATE, folder.resolve(GridFiles.TEMPLATE).toString());
        given.put(JobKey.JIG, folder.resolve(GridFiles.JIG).toString());
        given.put(
                JobKey.JIG_CENTRE,
                number(grid.jigCentre().x()) + "," + number(grid.jigCentre().y()));
        given.put(JobKey.RECIPE, Swatches.RECIPE);
        given.put(JobKey.LENS, grid.lens());
        given.put(JobKey.SHOP, folder.resolve(GridFiles.SHOP).toString());
        given.put(JobKey.OUT, request.out().toString());
        JobSettings read = new JobSettingsReader(folder).read(folder.toString(), given, problems);
        String name = request.out().getFileName().toString();
        return new JobSettings(name, read.order(), read.folder(), read.workingFolder(), read.given());
    }

    /**
     * The same at a place that the user knows: what is said of the recipe that was made of the values was asked for by them,
     * and the other tables are those of the user's shop.
     */
    private static Problem known(Problem problem, ShopFiles shop) {
        Place place = problem.place();
        if (!place.file().startsWith(GridFiles.SHOP + "/")) {
            return problem;
        }
        String table = place.file().substring(GridFiles.SHOP.length() + 1);
        Place known = table.equals(ShopFiles.RECIPES)
                ? Place.of("--vary")
                : new Place(shop.place(table), place.line(), place.column());
        return new Problem(problem.severity(), known, problem.item(), problem.message(), problem.remedy());
    }

    private static String number(double value) {
        return Decimals.text(value, 6);
    }

    private Optional<Found> swatches(Shop shop) {
        Optional<Recipe> recipe = known("recipe", request.recipe(), shop.recipes());
        List<Variation> varied = new ArrayList<>();
        request.vary().forEach(text -> Variation.parse(text, problems).ifPresent(varied::add));
        if (request.vary().isEmpty() || request.vary().size() > MOST_VARIED) {
            problems.error(Place.of("--vary"), request.vary().size() + " parameters vary", "vary one or two");
        } else if (varied.size() == MOST_VARIED
                && varied.get(0).parameter() == varied.get(1).parameter()) {
            problems.error(
                    Place.of("--vary"), varied.get(0).parameter().word() + " varies twice", "vary two parameters");
        }
        String lensName = request.lens().orElse(recipe.map(Recipe::lens).orElse(""));
        Optional<Lens> lens = known("lens", lensName, shop.lenses());
        recipe.filter(one -> request.step() < 1 || request.step() > one.steps().size())
                .ifPresent(one -> problems.error(
                        Place.of("--step"),
                        "recipe '" + one.name() + "' has no step " + request.step(),
                        "its steps are 1 to " + one.steps().size()));
        if (problems.hasErrors()) {
            return Optional.empty();
        }
        Optional<Variation> down = varied.size() > 1 ? Optional.of(varied.get(1)) : Optional.empty();
        return Optional.of(new Found(
                new Swatches(recipe.get(), recipe.get().steps().get(request.step() - 1), varied.get(0), down),
                lensName));
    }

    private record Found(Swatches swatches, String lens) {}

    private <T> Optional<T> known(String what, String name, Map<String, T> all) {
        Optional<T> found = Optional.ofNullable(all.get(name));
        if (found.isEmpty()) {
            problems.error(
                    Place.of("--" + what),
                    "unknown " + what + " '" + name + "'",
                    Suggestion.remedy(name, all.keySet()));
        }
        return found;
    }

    private Optional<GridFiles> lay(Found found) {
        Optional<Jig> jig = jig();
        Optional<Slot> slot = jig.flatMap(this::slot);
        Optional<GridFiles> grid = slot.map(one -> new GridFiles(
                found.swatches(), request.swatch(), jig.get(), one, jig.get().centre(), found.lens()));
        grid.ifPresent(this::checkRoom);
        return grid;
    }

    private Optional<Jig> jig() {
        try {
            return JigShelf.read(request.jig().getFileName().toString(), Files.readAllBytes(request.jig()), problems);
        } catch (IOException e) {
            problems.error(Place.of("--jig"), "'" + request.jig().getFileName() + "' cannot be read", "check its name");
            return Optional.empty();
        }
    }

    private Optional<Slot> slot(Jig jig) {
        Optional<Slot> found = jig.slots().stream()
                .filter(slot -> request.slot().map(slot.id()::equals).orElse(slot.usable()))
                .findFirst();
        if (found.isEmpty()) {
            problems.error(
                    Place.of(jig.name()),
                    request.slot().map(id -> "the jig has no slot '" + id + "'").orElse("the jig has no usable slot"),
                    Suggestion.remedy(
                            request.slot().orElse(""),
                            jig.slots().stream().map(Slot::id).toList()));
        }
        return found;
    }

    private void checkRoom(GridFiles grid) {
        Path outline = Path.of(Box.centred(grid.width(), grid.height()));
        if (!PocketRoom.holds(grid.slot(), outline)) {
            problems.error(
                    Place.of(grid.jig().name()),
                    "the swatches take " + Decimals.mm(grid.width()) + " x " + Decimals.mm(grid.height())
                            + " mm, which slot '" + grid.slot().id() + "' does not hold",
                    "ask for fewer values, or smaller swatches with --swatch-mm, or take another slot with --slot");
        }
    }
}
