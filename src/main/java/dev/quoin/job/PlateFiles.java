package dev.quoin.job;

import dev.quoin.format.PlateKind;
import dev.quoin.format.PlatePicture;
import dev.quoin.plate.Group;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Part;
import dev.quoin.plate.Placement;
import dev.quoin.plate.Plate;
import dev.quoin.plate.WorkedPart;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Blank;
import dev.quoin.shop.Step;
import dev.quoin.store.RunFolder;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;

/** Writes the files of a plate: one, or one a step, as SVG, and beside it as every other kind that the job asks for. */
final class PlateFiles {
    private final RunFolder folder;
    private final int last;
    private final boolean splitSteps;
    private final boolean hatched;
    private final boolean pictures;
    private final Set<PlateKind> kinds;

    /** @param last the number of the run's last plate */
    PlateFiles(JobSettings settings, int last, RunFolder folder, Problems problems) {
        this.folder = folder;
        this.last = last;
        this.splitSteps = settings.flag(JobKey.SPLIT_STEPS);
        this.hatched = settings.flag(JobKey.HATCHED);
        this.pictures = settings.flag(JobKey.PICTURES);
        this.kinds = Kinds.of(settings, problems).plates();
    }

    /** Writes those of a part; the names of the SVG files, in working order. */
    List<String> write(Plate plate, WorkedPart part) throws IOException {
        String stem = FileNames.part(plate, part.part(), last);
        List<LoadedItem> items = part.timed().items();
        List<Step> steps = plate.group().recipe().steps();
        List<String> names = new ArrayList<>();
        if (!splitSteps) {
            names.add(write(stem, plate, steps, items));
            return names;
        }
        for (Step step : steps) {
            names.add(write(stem + "-" + step.id(), plate, List.of(step), items));
        }
        return names;
    }

    /** Writes an item of a part, all steps, as a file of its own; its name. */
    String writeFirstPiece(Plate plate, Part part, LoadedItem item) throws IOException {
        String stem = FileNames.part(plate, part, last) + FileNames.FIRST_PIECE;
        return write(stem, plate, plate.group().recipe().steps(), List.of(item));
    }

    /**
     * Writes a part's picture, if the job asks for pictures: with areas as areas, also in a hatched run, since at the
     * scale of a picture their lines run together.
     */
    void picture(Plate plate, WorkedPart part, Collection<Placement> slots) throws IOException {
        if (pictures) {
            Group group = plate.group();
            String colour = group.blank().map(Blank::colour).orElse("");
            try (OutputStream out = folder.create(FileNames.part(plate, part.part(), last) + ".png")) {
                new PlatePicture(group.lens().field(), colour, slots)
                        .write(out, group.recipe().steps(), part.items());
            }
        }
    }

    private String write(String stem, Plate plate, List<Step> steps, List<LoadedItem> items) throws IOException {
        for (PlateKind kind : kinds) {
            try (OutputStream out = folder.create(stem + "." + kind.word())) {
                kind.inField(plate.group().lens().field(), hatched).write(out, steps, items);
            }
        }
        return stem + "." + PlateKind.SVG.word();
    }
}
