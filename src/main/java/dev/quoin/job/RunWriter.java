package dev.quoin.job;

import dev.quoin.paper.PlateView;
import dev.quoin.paper.SheetFoot;
import dev.quoin.plate.FieldPose;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Plate;
import dev.quoin.plate.WorkedPart;
import dev.quoin.plate.WorkedPlate;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Jig;
import dev.quoin.store.Run;
import dev.quoin.store.RunFolder;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes a planned run: plate after plate, then the tables and the run sheet, whose totals are known only at the end. */
final class RunWriter {
    private final LoadedJob job;
    private final Plan plan;
    private final Problems problems;
    private final RunFolder folder;
    private final Progress progress;
    private final ItemMerge merge;
    private final PlateWorker worker;
    private final PlateFiles files;
    private final RunTotals totals;
    private final ItemTimes itemTimes;

    RunWriter(LoadedJob job, Plan plan, Problems problems, RunFolder folder, Progress progress) {
        this.job = job;
        this.plan = plan;
        this.problems = problems;
        this.folder = folder;
        this.progress = progress;
        this.merge = new ItemMerge(job, plan.sharing());
        this.worker = new PlateWorker(job, plan);
        int last = job.section().platesBefore() + plan.plates().size();
        this.files = new PlateFiles(job.settings(), last, folder, problems);
        this.totals = new RunTotals(job.shop().machine(), plan.spoilage());
        this.itemTimes = new ItemTimes(job.items().size());
    }

    /** Writes all files of the run but the manifest. */
    RunSummary write() throws IOException {
        SheetViews views = new SheetViews(job, plan);
        PlatesCsv plates = new PlatesCsv();
        PackingList packing = new PackingList(job, problems);
        MissedMarks missed = new MissedMarks();
        InputsWriter inputs = new InputsWriter(job, folder);
        boolean pdf = Kinds.of(job.settings(), problems).pdfPaper();
        int threads = Threads.of(job.settings(), plan.plates().size());
        try (RunSheets sheets = new RunSheets(folder, job.settings().name(), pdf, job.fonts());
                InOrder inOrder = new InOrder(threads)) {
            inOrder.run(InOrder.each(plan.plates()), worker::work, worked -> {
                Plate plate = worked.plate();
                progress.report(
                        "writing plates",
                        plate.number() - job.section().platesBefore(),
                        plan.plates().size());
                missed.take(plate.group().recipe(), worked.steps());
                itemTimes.take(worked);
                List<List<String>> names = write(worked, plates);
                totals.take(worked, totals.isSetUpFor(plate) ? withFirstPiece(worked, names) : all(names));
                PlateView view = views.plate(worked, names, totals.last());
                packing.take(view);
                sheets.plate(view);
            });
            missed.tell(problems);
            inputs.takeFonts(problems);
            sheets.write(this::numbered, views.head(totals, problems), new SheetFoot(packing.parcels()));
        }
        writeTables(plates);
        inputs.write();
        RunSpares.write(job, folder);
        return totals.summary(job.settings().name(), Path.of(""), plan.leftOut().size());
    }

    /** Writes the files of each part of a plate; their names. */
    private List<List<String>> write(WorkedPlate worked, PlatesCsv plates) throws IOException {
        Plate plate = worked.plate();
        List<List<String>> names = new ArrayList<>();
        for (WorkedPart part : worked.parts()) {
            names.add(files.write(plate, part));
            Jig jig = plate.group().jig();
            files.picture(
                    plate,
                    part,
                    FieldPose.place(jig, part.part().stand(), job.shop().machine()));
            plates.take(plate, part.part(), names.get(names.size() - 1), part.time());
        }
        return names;
    }

    /** The files of a plate as the sheet names them, those of its first piece before all others. */
    private List<String> withFirstPiece(WorkedPlate worked, List<List<String>> names) throws IOException {
        List<String> files = new ArrayList<>();
        for (WorkedPart part : worked.parts()) {
            writeFirstPiece(worked.plate(), part).ifPresent(files::add);
        }
        files.addAll(all(names));
        return files;
    }

    private static List<String> all(List<List<String>> names) {
        return names.stream().flatMap(List::stream).toList();
    }

    /** Of a plate for which the machine is set up, if asked for. */
    private Optional<String> writeFirstPiece(Plate plate, WorkedPart part) throws IOException {
        int first = plate.seats().get(0).item();
        Optional<LoadedItem> found = part.timed().items().stream()
                .filter(item -> item.item() == first)
                .findFirst();
        if (!job.settings().flag(JobKey.FIRST_PIECE) || found.isEmpty()) {
            return Optional.empty();
        }
        LoadedItem item = found.get();
        String file = files.writeFirstPiece(plate, part.part(), item);
        problems.note(
                Place.of(file),
                "holds item " + item.item() + " alone, in slot "
                        + item.placement().slot().id(),
                "mark it on a spare blank and look at it; then lay a fresh blank there, since the plate marks it again");
        return Optional.of(file);
    }

    private String numbered(String name) {
        return Run.numbered(name, job.section().number());
    }

    private void writeTables(PlatesCsv plates) throws IOException {
        try (Writer out = folder.createText(numbered("plates.csv"))) {
            plates.write(out);
        }
        if (PartsCsv.isNeeded(plan.plates())) {
            try (Writer out = folder.createText(numbered(PartsCsv.FILE))) {
                PartsCsv.write(out, plan.plates());
            }
        }
        try (Writer out = folder.createText(numbered("items.csv"))) {
            new ItemsCsv(job, merge).write(out, itemTimes);
        }
        try (Writer out = folder.createText(numbered("problems.csv"))) {
            ProblemsCsv.write(out, problems.sorted());
        }
    }
}
