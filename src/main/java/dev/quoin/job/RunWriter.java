package dev.quoin.job;

import dev.quoin.paper.PlateView;
import dev.quoin.paper.RunSheetWriter;
import dev.quoin.paper.SheetFoot;
import dev.quoin.plate.LoadedItem;
import dev.quoin.plate.Plate;
import dev.quoin.plate.PlateTime;
import dev.quoin.plate.PlateTimer;
import dev.quoin.plate.TimedPlate;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.shop.Recipe;
import dev.quoin.store.Run;
import dev.quoin.store.RunFolder;
import dev.quoin.store.Spool;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Writes a planned run: plate after plate, then the tables and the run sheet, whose totals are known only at the end. */
final class RunWriter {
    private final LoadedJob job;
    private final Plan plan;
    private final Problems problems;
    private final RunFolder folder;
    private final Progress progress;
    private final ItemMerge merge;
    private final PlateTimer timer;
    private final PlateFiles files;
    private final boolean hatched;
    private final RunTotals totals;
    private final ItemTimes itemTimes;

    RunWriter(LoadedJob job, Plan plan, Problems problems, RunFolder folder, Progress progress) {
        this.job = job;
        this.plan = plan;
        this.problems = problems;
        this.folder = folder;
        this.progress = progress;
        this.merge = new ItemMerge(job, plan.sharing());
        this.timer = new PlateTimer(job.shop().machine());
        int last = job.section().platesBefore() + plan.plates().size();
        this.files = new PlateFiles(job.settings(), last, folder, problems);
        this.hatched = job.settings().flag(JobKey.HATCHED);
        this.totals = new RunTotals(job.shop().machine(), plan.spoilage());
        this.itemTimes = new ItemTimes(job.items().size());
    }

    /** Writes all files of the run but the manifest. */
    RunSummary write() throws IOException {
        RunSheetWriter sheet = new RunSheetWriter();
        SheetViews views = new SheetViews(job, plan);
        PlatesCsv plates = new PlatesCsv();
        PackingList packing = new PackingList(job, problems);
        MissedMarks missed = new MissedMarks();
        InputsWriter inputs = new InputsWriter(job, folder);
        try (Spool blocks = folder.spool()) {
            for (Plate plate : plan.plates()) {
                progress.report(
                        "writing plates",
                        plate.number() - job.section().platesBefore(),
                        plan.plates().size());
                List<LoadedItem> items = merge.load(plate);
                TimedPlate timed = time(plate, items);
                PlateTime time = timed.time();
                missed.take(plate.group().recipe(), time.steps());
                List<String> names = files.write(plate, timed.items());
                files.picture(plate, plan.slots().get(plate.group()).keySet(), items);
                itemTimes.take(plate, time);
                totals.take(plate, withFirstPiece(plate, timed.items(), names), time);
                plates.take(plate, names, time);
                PlateView view = views.plate(plate, items, time, totals.last());
                packing.take(view);
                sheet.plate(blocks.writer(), view);
            }
            missed.tell(problems);
            inputs.takeFonts(problems);
            try (Writer out = folder.createText(numbered("run-sheet.html"))) {
                sheet.head(out, views.head(totals, problems));
                blocks.copyTo(out);
                sheet.foot(out, new SheetFoot(packing.parcels()));
            }
        }
        writeTables(plates);
        inputs.write();
        return totals.summary(job.settings().name(), Path.of(""), plan.leftOut().size());
    }

    /** The files of a plate as the sheet names them: before those of the run's first plate its first piece, if asked for. */
    private List<String> withFirstPiece(Plate plate, List<LoadedItem> items, List<String> names) throws IOException {
        boolean isFirst = plate.number() == job.section().platesBefore() + 1;
        if (!isFirst || !job.settings().flag(JobKey.FIRST_PIECE)) {
            return names;
        }
        String file = files.writeFirstPiece(plate, items);
        LoadedItem item = items.get(0);
        problems.note(
                Place.of(file),
                "holds item " + item.item() + " alone, in slot "
                        + item.placement().slot().id(),
                "mark it on a spare blank and look at it; then lay a fresh blank there, since the plate marks it again");
        List<String> shown = new ArrayList<>(List.of(file));
        shown.addAll(names);
        return shown;
    }

    private String numbered(String name) {
        return Run.numbered(name, job.section().number());
    }

    private TimedPlate time(Plate plate, List<LoadedItem> items) {
        Recipe recipe = plate.group().recipe();
        return hatched ? timer.hatch(recipe, items) : new TimedPlate(timer.time(recipe, items), items);
    }

    private void writeTables(PlatesCsv plates) throws IOException {
        try (Writer out = folder.createText(numbered("plates.csv"))) {
            plates.write(out);
        }
        try (Writer out = folder.createText(numbered("items.csv"))) {
            new ItemsCsv(job, merge).write(out, itemTimes);
        }
        try (Writer out = folder.createText(numbered("problems.csv"))) {
            ProblemsCsv.write(out, problems.sorted());
        }
    }
}
