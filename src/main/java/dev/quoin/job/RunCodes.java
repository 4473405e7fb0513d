package dev.quoin.job;

import dev.quoin.art.Artwork;
import dev.quoin.art.MarkedCode;
import dev.quoin.art.SharedSizes;
import dev.quoin.order.Item;
import dev.quoin.problem.Problems;
import dev.quoin.store.Run;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the codes of a run are to say: its rows merged once more, of templates that have codes. */
final class RunCodes {
    private static final String ATTRIBUTE = "data-code";

    private final Run run;
    private final RunBook book;

    RunCodes(Run run, RunBook book) {
        this.run = run;
        this.book = book;
    }

    /** The codes on each item that has any, by its number. */
    Map<Integer, List<MarkedCode>> expected() throws IOException {
        Map<Integer, List<MarkedCode>> codes = new HashMap<>();
        if (!anyTemplateHasCodes()) {
            return codes;
        }
        for (int section = 1; section <= run.sections(); section++) {
            LoadedJob job = RunJob.load(run, section);
            for (RunItem row : book.items().values()) {
                if (row.section() == section) {
                    Item item = job.items().numbered(row.number());
                    for (Artwork side : merge(job, item)) {
                        if (!side.codes().isEmpty()) {
                            codes.computeIfAbsent(row.number(), made -> new ArrayList<>())
                                    .addAll(side.codes());
                        }
                    }
                }
            }
        }
        return codes;
    }

    private boolean anyTemplateHasCodes() throws IOException {
        for (int section = 1; section <= run.sections(); section++) {
            for (Map.Entry<String, byte[]> file :
                    run.files(Run.numbered(InputsWriter.FOLDER, section)).entrySet()) {
                if (file.getKey().endsWith(".svg")
                        && new String(file.getValue(), StandardCharsets.ISO_8859_1).contains(ATTRIBUTE)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** What is marked on each side of an item. */
    private static List<Artwork> merge(LoadedJob job, Item item) throws IOException {
        List<Artwork> sides = new ArrayList<>();
        Optional<Choice> choice = job.chooser().choose(item.row(), new Problems());
        if (choice.isPresent()) {
            for (ChosenTemplate side : choice.get().sides()) {
                side.template()
                        .merge(
                                item,
                                job.order().place(item.row()),
                                choice.get().group().recipe(),
                                SharedSizes.none(),
                                new Problems())
                        .ifPresent(sides::add);
            }
        }
        return sides;
    }
}
