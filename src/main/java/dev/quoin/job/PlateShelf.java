package dev.quoin.job;

import dev.quoin.art.Mark;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.Path;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Placement;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Recipe;
import dev.quoin.store.PlateMark;
import dev.quoin.store.PlateReader;
import dev.quoin.store.Run;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Takes items off the plates of a run: their marks as the plate files have them, so that they stay the same. */
final class PlateShelf {
    private final Run run;
    private final RunBook book;
    private final Map<Integer, RunShop> shops = new HashMap<>();

    PlateShelf(Run run, RunBook book) {
        this.run = run;
        this.book = book;
    }

    /** These items of one plate, in their own slots. */
    ReprintedPlate take(List<RunItem> rows) throws IOException {
        RunPlate plate = book.plates().get(rows.get(0).plate());
        RunShop shop = shop(plate.section());
        Lens lens = shop.lens(plate.lens());
        Recipe recipe = shop.recipe(plate.recipe());
        List<ReprintedPart> parts = new ArrayList<>();
        for (RunPart part : plate.parts()) {
            List<RunItem> own = rows.stream()
                    .filter(row -> row.parts().contains(part.number()))
                    .toList();
            if (!own.isEmpty()) {
                Map<String, Placement> placements = shop.placements(plate.jig(), part.stand());
                parts.add(new ReprintedPart(part.stand(), items(own, marks(part, own), placements, recipe, lens)));
            }
        }
        return new ReprintedPlate(
                shop, recipe, recipe.steps(), shop.blank(plate.blank()), lens, plate.jig(), parts, rows);
    }

    private static List<LoadedItem> items(
            List<RunItem> rows,
            Map<Integer, List<PlateMark>> marks,
            Map<String, Placement> placements,
            Recipe recipe,
            Lens lens) {
        List<LoadedItem> items = new ArrayList<>();
        for (RunItem row : rows) {
            Placement placement = placements.get(row.slot());
            items.add(new LoadedItem(
                    row.number(), placement, byStep(marks.get(row.number()), recipe, placement, lens), List.of()));
        }
        return items;
    }

    private RunShop shop(int section) throws IOException {
        RunShop known = shops.get(section);
        if (known == null) {
            known = RunShop.of(run, section);
            shops.put(section, known);
        }
        return known;
    }

    private Map<Integer, List<PlateMark>> marks(RunPart part, List<RunItem> rows) throws IOException {
        Set<Integer> wanted = rows.stream().map(RunItem::number).collect(Collectors.toSet());
        Map<Integer, List<PlateMark>> marks = new HashMap<>();
        for (String file : part.files()) {
            PlateReader.read(run.open(file), wanted)
                    .forEach((item, found) -> marks.computeIfAbsent(item, made -> new ArrayList<>())
                            .addAll(found));
        }
        return marks;
    }

    /** Marks of the page, y down, back in item coordinates, by step. */
    private static Map<Integer, List<Mark>> byStep(
            List<PlateMark> marks, Recipe recipe, Placement placement, Lens lens) {
        Affine toItem = new Affine(1, 0, 0, -1, -lens.field() / 2, lens.field() / 2)
                .then(placement.pose().inverse());
        Map<Integer, List<Mark>> found = new HashMap<>();
        for (PlateMark mark : marks) {
            Path path = mark.path().transform(toItem);
            String process = recipe.steps().get(mark.step() - 1).process();
            found.computeIfAbsent(mark.step(), made -> new ArrayList<>())
                    .add(new Mark(process, path, new Area(path, mark.rule())));
        }
        return found;
    }
}
