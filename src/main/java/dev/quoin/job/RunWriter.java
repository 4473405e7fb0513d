package dev.quoin.job;

import dev.quoin.paper.SheetFoot;
import dev.quoin.plate.Plate;
import dev.quoin.plate.WorkedPart;
import dev.quoin.plate.WorkedPlate;
import dev.quoin.problem.Problems;
import dev.quoin.store.Run;
import dev.quoin.store.RunFolder;
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
    private final RunTotals totals;
    private final ItemTimes itemTimes;
    /** As they were written. */
    private final List<Plate> plates = new ArrayList<>();

    RunWriter(LoadedJob job, Plan plan, Problems problems, RunFolder folder, Progress progress) {
        this.job = job;
        this.plan = plan;
        this.problems = problems;
        this.folder = folder;
        this.progress = progress;
        this.merge = new ItemMerge(job, plan.sharing());
        this.totals = new RunTotals(job.shop().machine(), plan.spoilage());
        this.itemTimes = new ItemTimes(job.items().size());
    }

    /** Writes all files of the run but the manifest. */
    RunSummary write() throws IOException {
        SheetViews views = new SheetViews(job, plan);
        PlateWriter writer = new PlateWriter(job, plan, views, folder, problems);
        PlatesCsv table = new PlatesCsv();
        PackingList packing = new PackingList(job, problems);
        MissedMarks missed = new MissedMarks();
        InputsWriter inputs = new InputsWriter(job, folder);
        boolean pdf = Kinds.of(job.settings(), problems).pdfPaper();
        int threads = Threads.of(job.settings(), plan.plates().size());
        List<String> written;
        try (RunSheets sheets = new RunSheets(folder, job.settings().name(), pdf, job.fonts());
                InOrder inOrder = new InOrder(threads)) {
            inOrder.run(InOrder.each(plan.plates()), writer::write, plate -> {
                take(plate, table, missed);
                packing.take(plate.view());
                sheets.plate(plate.view(), plate.block());
            });
            missed.tell(problems);
            inputs.takeFonts(problems);
            written = sheets.write(this::numbered, views.head(totals, problems), new SheetFoot(packing.parcels()));
        }
        writeTables(table);
        inputs.write();
        RunSpares.write(job, folder);
        return totals.summary(
                job.settings().name(), Path.of(""), written, plan.leftOut().size());
    }

    private void take(WrittenPlate written, PlatesCsv table, MissedMarks missed) throws IOException {
        WorkedPlate worked = written.worked();
        Plate plate = worked.plate();
        progress.report(
                "writing plates",
                plate.number() - job.section().platesBefore(),
                plan.plates().size());
        missed.take(plate.group().recipe(), worked.steps());
        itemTimes.take(worked);
        for (int i = 0; i < worked.parts().size(); i++) {
            WorkedPart part = worked.parts().get(i);
            table.take(plate, part.part(), written.names().get(i), part.time());
        }
        totals.take(worked, written.files());
        plates.add(plate);
        problems.addAll(written.notes());
    }

    private String numbered(String name) {
        return Run.numbered(name, job.section().number());
    }

    private void writeTables(PlatesCsv table) throws IOException {
        try (Writer out = folder.createText(numbered("plates.csv"))) {
            table.write(out);
        }
        if (PartsCsv.isNeeded(plates)) {
            try (Writer out = folder.createText(numbered(PartsCsv.FILE))) {
                PartsCsv.write(out, plates);
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
