package dev.quoin.job;

import dev.quoin.paper.PlateView;
import dev.quoin.plate.FieldPose;
import dev.quoin.plate.Group;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Plate;
import dev.quoin.plate.WorkedPart;
import dev.quoin.plate.WorkedPlate;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Jig;
import dev.quoin.store.RunFolder;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Works plates out, writes their files, and lays their blocks of the run sheet. Safe for use by several threads. */
final class PlateWriter {
    private final LoadedJob job;
    private final Plan plan;
    private final PlateWorker worker;
    private final PlateFiles files;
    private final SheetViews views;

    PlateWriter(LoadedJob job, Plan plan, SheetViews views, RunFolder folder, Problems problems) {
        this.job = job;
        this.plan = plan;
        this.worker = new PlateWorker(job, plan);
        int last = job.section().platesBefore() + plan.plates().size();
        this.files = new PlateFiles(job.settings(), last, folder, problems);
        this.views = views;
    }

    WrittenPlate write(Plate plate) throws IOException {
        WorkedPlate worked = worker.work(plate);
        Problems notes = new Problems();
        SetUp setUp = SetUp.before(groupBefore(plate), plate.group(), job.shop().machine());
        List<List<String>> names = writeParts(worked);
        List<String> all = setUp.needed() ? withFirstPiece(worked, names, notes) : all(names);
        PlateView view = views.plate(worked, setUp, all, names);
        return new WrittenPlate(worked, names, all, view, RunSheets.block(view), notes);
    }

    private Optional<Group> groupBefore(Plate plate) {
        int before = plate.number() - job.section().platesBefore() - 2;
        return before < 0
                ? Optional.empty()
                : Optional.of(plan.plates().get(before).group());
    }

    /** Writes the files of each part of a plate; their names. */
    private List<List<String>> writeParts(WorkedPlate worked) throws IOException {
        Plate plate = worked.plate();
        List<List<String>> names = new ArrayList<>();
        for (WorkedPart part : worked.parts()) {
            names.add(files.write(plate, part));
            Jig jig = plate.group().jig();
            files.picture(
                    plate,
                    part,
                    FieldPose.place(jig, part.part().stand(), job.shop().machine()));
        }
        return names;
    }

    /** The files of a plate as the sheet names them, those of its first piece before all others. */
    private List<String> withFirstPiece(WorkedPlate worked, List<List<String>> names, Problems notes)
            throws IOException {
        List<String> files = new ArrayList<>();
        for (WorkedPart part : worked.parts()) {
            writeFirstPiece(worked.plate(), part, notes).ifPresent(files::add);
        }
        files.addAll(all(names));
        return files;
    }

    private static List<String> all(List<List<String>> names) {
        return names.stream().flatMap(List::stream).toList();
    }

    /** If asked for. */
    private Optional<String> writeFirstPiece(Plate plate, WorkedPart part, Problems notes) throws IOException {
        int first = plate.seats().get(0).item();
        Optional<LoadedItem> found = part.timed().items().stream()
                .filter(item -> item.item() == first)
                .findFirst();
        if (!job.settings().flag(JobKey.FIRST_PIECE) || found.isEmpty()) {
            return Optional.empty();
        }
        LoadedItem item = found.get();
        String file = files.writeFirstPiece(plate, part.part(), item);
        notes.note(
                Place.of(file),
                "holds item " + item.item() + " alone, in slot "
                        + item.placement().slot().id(),
                "mark it on a spare blank and look at it; then lay a fresh blank there, since the plate marks it again");
        return Optional.of(file);
    }
}
