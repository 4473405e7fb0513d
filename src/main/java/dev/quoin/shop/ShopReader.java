package dev.quoin.shop;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the tables of a shop. {@code lenses.csv}, {@code machine.csv} and {@code recipes.csv} must be there;
 * {@code blanks.csv} and {@code materials.csv} may be missing. Parameters are checked for sense, not against the
 * machine's limits, which is for optics.
 */
public final class ShopReader {
    private final ShopFiles files;
    private final Problems problems;

    private ShopReader(ShopFiles files, Problems problems) {
        this.files = files;
        this.problems = problems;
    }

    /** The shop; nothing if any of its tables has an error. */
    public static Optional<Shop> read(ShopFiles files, Problems problems) {
        int before = problems.errors();
        Optional<Shop> shop = new ShopReader(files, problems).read();
        return problems.errors() > before ? Optional.empty() : shop;
    }

    private Optional<Shop> read() {
        Optional<ShopTable> lensTable = needed(ShopFiles.LENSES, LensTable.REQUIRED, LensTable.OPTIONAL);
        Optional<ShopTable> machineTable = needed(ShopFiles.MACHINE, MachineTable.REQUIRED, MachineTable.OPTIONAL);
        Optional<ShopTable> recipeTable = needed(ShopFiles.RECIPES, RecipeTable.REQUIRED, RecipeTable.OPTIONAL);
        Optional<ShopTable> blankTable = open(ShopFiles.BLANKS, BlankTable.REQUIRED, BlankTable.OPTIONAL);
        Optional<ShopTable> materialTable = open(ShopFiles.MATERIALS, MaterialTable.REQUIRED, List.of());

        Map<String, Lens> lenses = lensTable.map(LensTable::read).orElse(Map.of());
        Map<String, Material> materials = materialTable.map(MaterialTable::read).orElse(Map.of());
        boolean unread = files.files().containsKey(ShopFiles.MATERIALS) && materialTable.isEmpty();
        Optional<Set<String>> knownMaterials = unread ? Optional.empty() : Optional.of(materials.keySet());
        Map<String, Blank> blanks =
                blankTable.map(table -> BlankTable.read(table, knownMaterials)).orElse(Map.of());
        RecipeTable recipeReader = new RecipeTable(lensTable.map(table -> lenses.keySet()), knownMaterials, problems);
        Map<String, Recipe> recipes = recipeTable.map(recipeReader::read).orElse(Map.of());
        return machineTable
                .map(table -> MachineTable.read(table, files.place(ShopFiles.MACHINE), problems))
                .map(machine -> new Shop(lenses, machine, recipes, blanks, materials));
    }

    private Optional<ShopTable> needed(String name, List<String> required, List<String> optional) {
        if (!files.files().containsKey(name)) {
            problems.error(
                    Place.of(files.place(name)), "missing", "add it, with the columns " + String.join(",", required));
        }
        return open(name, required, optional);
    }

    private Optional<ShopTable> open(String name, List<String> required, List<String> optional) {
        return Optional.ofNullable(files.files().get(name))
                .flatMap(content -> ShopTable.open(files.place(name), content, required, optional, problems));
    }
}
