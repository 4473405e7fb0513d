package dev.quoin.job;

import dev.quoin.plate.Handling;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Part;
import dev.quoin.plate.Plate;
import dev.quoin.plate.PlateTimer;
import dev.quoin.plate.TimedPlate;
import dev.quoin.plate.WorkedPart;
import dev.quoin.plate.WorkedPlate;
import dev.quoin.shop.Recipe;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Works out all that is to be known of a plate before it is written; one plate does not depend on another. */
final class PlateWorker {
    private final ItemMerge merge;
    private final PlateTimer timer;
    private final Handling handling;
    private final boolean hatched;

    PlateWorker(LoadedJob job, Plan plan) {
        this.merge = new ItemMerge(job, plan.sharing());
        this.timer = new PlateTimer(job.shop().machine());
        this.handling = new Handling(job.shop().machine());
        this.hatched = job.settings().flag(JobKey.HATCHED);
    }

    /** The plate with its items as they go into files; of a round piece without the strips that hold none of its marks. */
    WorkedPlate work(Plate plate) throws IOException {
        return work(plate, hatched);
    }

    /** The plate for its times alone. */
    WorkedPlate time(Plate plate) throws IOException {
        return work(plate, false);
    }

    private WorkedPlate work(Plate whole, boolean lines) throws IOException {
        List<Loading> loadings = new ArrayList<>();
        for (Part part : whole.parts()) {
            loadings.add(new Loading(part, merge.load(whole, part)));
        }
        if (whole.group().jig().round().isPresent() && loadings.stream().anyMatch(Loading::isMarked)) {
            // All pieces of a group have the same strips; no one is to turn a piece to one where it has no marks.
            loadings.removeIf(loading -> !loading.isMarked());
        }
        Plate plate = loadings.size() == whole.parts().size()
                ? whole
                : whole.keeping(loadings.stream().map(Loading::part).toList());
        List<WorkedPart> parts = new ArrayList<>();
        for (Part part : plate.parts()) {
            List<LoadedItem> items = loadings.get(parts.size()).items();
            parts.add(new WorkedPart(part, items, timed(plate, part, items, lines)));
        }
        return new WorkedPlate(plate, parts);
    }

    private record Loading(Part part, List<LoadedItem> items) {
        boolean isMarked() {
            return items.stream().anyMatch(LoadedItem::isMarked);
        }
    }

    private TimedPlate timed(Plate plate, Part part, List<LoadedItem> items, boolean lines) {
        Recipe recipe = plate.group().recipe();
        double before = handling.before(plate, part);
        return lines ? timer.hatch(recipe, items, before) : new TimedPlate(timer.time(recipe, items, before), items);
    }
}
