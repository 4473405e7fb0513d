package dev.quoin.job;

import dev.quoin.art.Mark;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Area;
import dev.quoin.geometry.Path;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Placement;
import dev.quoin.shop.Blank;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Recipe;
import dev.quoin.store.PlateMark;
import dev.quoin.store.PlateReader;
import dev.quoin.store.Run;
import dev.quoin.table.TableRow;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The part of a plate that is marked again, as the run has it.
 *
 * @param items with the marks of the plate file, each at its place in the field
 * @param rows what {@code items.csv} says of them, in the same order
 * @param placements every slot of the jig as it lies in the field, by its id
 */
record ReprintedPlate(
        int number,
        Recipe recipe,
        Optional<Blank> blank,
        Lens lens,
        String jig,
        List<LoadedItem> items,
        List<RunItem> rows,
        Map<String, Placement> placements) {
    /** Reads the items of one plate back. */
    static ReprintedPlate read(Run run, RunShop shop, List<RunItem> rows) throws IOException {
        String number = Integer.toString(rows.get(0).plate());
        List<List<String>> files = run.table("plates.csv").rows().stream()
                .map(TableRow::cells)
                .filter(cells -> cells.get(0).equals(number))
                .toList();
        String jig = PlatesCsv.cell(files.get(0), "jig");
        Lens lens = shop.lens(PlatesCsv.cell(files.get(0), "lens"));
        Map<String, Placement> placements = shop.placements(jig);
        Map<Integer, List<PlateMark>> marks = marks(run, files, rows);
        Recipe recipe = shop.recipe(PlatesCsv.cell(files.get(0), "recipe"));
        List<LoadedItem> items = new ArrayList<>();
        for (RunItem row : rows) {
            Placement placement = placements.get(row.slot());
            items.add(new LoadedItem(
                    row.number(), placement, byStep(marks.get(row.number()), recipe, placement, lens), List.of()));
        }
        Optional<Blank> blank = shop.blank(PlatesCsv.cell(files.get(0), "blank"));
        return new ReprintedPlate(rows.get(0).plate(), recipe, blank, lens, jig, items, rows, placements);
    }

    /** The same, its one item in another slot. */
    ReprintedPlate movedTo(Placement slot) {
        List<LoadedItem> moved = List.of(items.get(0).movedTo(slot));
        return new ReprintedPlate(number, recipe, blank, lens, jig, moved, rows, placements);
    }

    private static Map<Integer, List<PlateMark>> marks(Run run, List<List<String>> files, List<RunItem> rows)
            throws IOException {
        Set<Integer> wanted = rows.stream().map(RunItem::number).collect(Collectors.toSet());
        Map<Integer, List<PlateMark>> marks = new HashMap<>();
        for (List<String> file : files) {
            PlateReader.read(run.open(PlatesCsv.cell(file, "file")), wanted)
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
