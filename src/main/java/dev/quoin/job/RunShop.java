package dev.quoin.job;

import dev.quoin.lettering.FontLibrary;
import dev.quoin.plate.FieldPose;
import dev.quoin.plate.Placement;
import dev.quoin.plate.Stand;
import dev.quoin.plate.Stands;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Blank;
import dev.quoin.shop.Cylinder;
import dev.quoin.shop.Jig;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Machine;
import dev.quoin.shop.Material;
import dev.quoin.shop.Recipe;
import dev.quoin.shop.Shop;
import dev.quoin.shop.ShopFiles;
import dev.quoin.shop.ShopReader;
import dev.quoin.store.Run;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What a run was prepared with, as it keeps it: the shop's tables, the jigs, the settings. */
final class RunShop {
    private final Run run;
    private final Shop shop;
    private final JobSettings settings;
    private final String inputs;

    private RunShop(Run run, Shop shop, JobSettings settings, String inputs) {
        this.run = run;
        this.shop = shop;
        this.settings = settings;
        this.inputs = inputs;
    }

    /**
     * Reads them.
     *
     * @throws IOException if they are not in the run as they were prepared
     */
    static RunShop of(Run run, int section) throws IOException {
        Problems problems = new Problems();
        String inputs = Run.numbered(InputsWriter.FOLDER, section);
        ShopFiles files = new ShopFiles(inputs + "shop", run.files(inputs + "shop/"));
        Optional<Shop> shop = ShopReader.read(files, problems);
        if (shop.isEmpty()) {
            throw new IOException(
                    "the run's tables cannot be read: " + problems.sorted().get(0));
        }
        return new RunShop(run, shop.get(), settings(run, section), inputs);
    }

    /** What was set for a section of a run. */
    static JobSettings settings(Run run, int section) throws IOException {
        Path folder = run.folder().resolve(Run.numbered(InputsWriter.FOLDER, section));
        return new JobSettingsReader(folder).read(folder.toString(), Map.of(), new Problems());
    }

    /** Whether the plate files hold the lines that fill areas, and not the areas. */
    boolean hatched() {
        return settings.flag(JobKey.HATCHED);
    }

    /** The kinds of file that the run was written as. */
    Kinds kinds() {
        return Kinds.of(settings, new Problems());
    }

    /** The fonts that the run keeps. */
    FontLibrary fonts() throws IOException {
        return FontLibrary.open(settings.paths(JobKey.FONTS), settings.flag(JobKey.SYSTEM_FONTS), new Problems());
    }

    Machine machine() {
        return shop.machine();
    }

    /** Whether the run was prepared with this slot left empty. */
    boolean isSkipped(String slot) {
        return settings.list(JobKey.SKIP_SLOTS).contains(slot);
    }

    Lens lens(String name) throws IOException {
        return named("lens", name, shop.lenses());
    }

    Recipe recipe(String name) throws IOException {
        return named("recipe", name, shop.recipes());
    }

    Optional<Blank> blank(String name) {
        return Optional.ofNullable(shop.blanks().get(name));
    }

    Material material(Blank blank) {
        return shop.material(blank);
    }

    /** In which ways its jigs can stand. */
    Stands stands() {
        return new StandsReader(settings, new Problems()).read();
    }

    /** The slots of a jig as they lie in the field while it stands so, by their ids, in the jig's order. */
    Map<String, Placement> placements(String jigName, Stand stand) throws IOException {
        Map<String, Placement> placements = new LinkedHashMap<>();
        FieldPose.place(jig(jigName), stand, shop.machine())
                .forEach(one -> placements.put(one.slot().id(), one));
        return placements;
    }

    /** The round piece that what is called so turns; none if it is a jig. */
    Optional<Cylinder> round(String jigName) {
        return settings.text(JobKey.ROTARY).isPresent() ? Cylinder.named(jigName) : Optional.empty();
    }

    private Jig jig(String name) throws IOException {
        Optional<Cylinder> piece = round(name);
        if (piece.isPresent()) {
            Jig turning = Jig.turning(piece.get());
            return JigStand.of(settings, machine(), new Problems())
                    .stand(turning, new Problems())
                    .orElse(turning);
        }
        for (Map.Entry<String, byte[]> file : run.files(inputs).entrySet()) {
            if (file.getKey().equals(name + ".svg") || file.getKey().equals(name + ".csv")) {
                // An order or a template may be called like it, and is no jig.
                Optional<Jig> jig = JigShelf.read(file.getKey(), file.getValue(), new Problems())
                        .flatMap(read ->
                                JigStand.of(settings, machine(), new Problems()).stand(read, new Problems()));
                if (jig.isPresent()) {
                    return jig.get();
                }
            }
        }
        throw new FileNotFoundException("the run keeps no jig " + name);
    }

    private static <T> T named(String what, String name, Map<String, T> all) throws IOException {
        T found = all.get(name);
        if (found == null) {
            throw new FileNotFoundException("the run keeps no " + what + " " + name);
        }
        return found;
    }
}
