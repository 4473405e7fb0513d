package dev.quoin.job;

import dev.quoin.art.Artwork;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Stand;
import dev.quoin.problem.Problems;
import dev.quoin.store.Run;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** What is to be marked on the round pieces of a run: its rows merged once more. */
record RunDrawings(Run run, RunBook book, int section) {
    /** Whether the section's pieces are round. */
    boolean areRound() throws IOException {
        return RunShop.settings(run, section).text(JobKey.ROTARY).isPresent();
    }

    boolean hatched() throws IOException {
        return RunShop.settings(run, section).flag(JobKey.HATCHED);
    }

    /** The items of the section, each with its drawing laid flat. */
    List<LoadedItem> all() throws IOException {
        LoadedJob job = RunJob.load(run, section);
        ItemMerge merge = new ItemMerge(
                job, new Surveyor(job, new Problems(), Progress.SILENT).survey().sharing());
        RunShop shop = RunShop.of(run, section);
        List<LoadedItem> items = new ArrayList<>();
        for (RunItem row : book.items().values()) {
            if (row.section() == section) {
                RunPlate plate = book.plates().get(row.plate());
                Artwork artwork = merge.merge(
                        job.items().numbered(row.number()),
                        Stand.LOADED,
                        merge.sharing().ofOrder());
                items.add(LoadedItem.of(
                        row.number(),
                        shop.placements(plate.jig(), Stand.LOADED).get(row.slot()),
                        artwork,
                        shop.recipe(plate.recipe())));
            }
        }
        return items;
    }
}
