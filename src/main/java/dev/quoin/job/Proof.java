package dev.quoin.job;

import dev.quoin.order.Row;
import dev.quoin.paper.ProofHead;
import dev.quoin.paper.ProofItem;
import dev.quoin.paper.ProofPdf;
import dev.quoin.paper.ProofWriter;
import dev.quoin.problem.Problems;
import dev.quoin.store.NewFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/** Draws every piece of a job on one page that the customer can approve. */
public final class Proof {
    private final JobSettings settings;
    private final Progress progress;

    public Proof(JobSettings settings, Progress progress) {
        this.settings = settings;
        this.progress = progress;
    }

    /**
     * Writes the proof; {@code problems} may hold what was found in the job's settings.
     *
     * @return nothing, and nothing written, where there are errors
     * @throws IOException if a file that the job names is missing or cannot be read, or the proof cannot be written
     */
    public Outcome<ProofSummary> run(Problems problems) throws IOException {
        Path out = out();
        boolean replace = settings.flag(JobKey.REPLACE);
        NewFile.checkFree(out, replace);
        Optional<LoadedJob> job = new JobLoader(settings, problems).load();
        List<Integer> columns = job.map(loaded -> columns(loaded, problems)).orElse(List.of());
        Optional<Plan> plan = job.isEmpty() ? Optional.empty() : new Planning(job.get(), problems, progress).plan();
        if (plan.isEmpty()) {
            return new Outcome<>(Optional.empty(), problems.sorted());
        }
        ProofViews views = new ProofViews(job.get(), columns, problems);
        try (NewFile file = NewFile.begin(out, replace)) {
            int pieces = write(job.get(), plan.get(), views, file);
            file.publish();
            return new Outcome<>(Optional.of(new ProofSummary(pieces, out)), problems.sorted());
        }
    }

    /** The run folder that a job's own settings name is no place for it. */
    private Path out() {
        boolean onCommandLine = settings.place(JobKey.OUT).file().equals("--" + JobKey.OUT.option());
        return settings.path(JobKey.OUT)
                .filter(path -> onCommandLine)
                .orElseGet(() -> settings.workingFolder().resolve("proofs").resolve(settings.name() + ".html"));
    }

    private List<Integer> columns(LoadedJob job, Problems problems) {
        List<Integer> columns = new ArrayList<>();
        for (String name : settings.list(JobKey.SHOW)) {
            OptionalInt column = Role.column(job.order(), name, settings.place(JobKey.SHOW), JobKey.SHOW, problems);
            column.ifPresent(columns::add);
        }
        return columns;
    }

    private int write(LoadedJob job, Plan plan, ProofViews views, NewFile file) throws IOException {
        ProofArtwork artwork = new ProofArtwork(job.making(plan.items()), plan);
        ProofHead head = views.head(artwork.pieces(), plan.leftOut());
        if (isPdf(out())) {
            try (ProofPdf pdf = new ProofPdf(head, job.fonts())) {
                write(job, views, artwork, pdf::item);
                pdf.save(file.stream(), head);
            }
        } else {
            ProofWriter html = new ProofWriter();
            html.head(file.writer(), head);
            write(job, views, artwork, item -> html.item(file.writer(), item));
            html.foot(file.writer(), head);
        }
        return artwork.pieces();
    }

    private static boolean isPdf(Path out) {
        return out.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".pdf");
    }

    /** Takes the items of a proof, one after the other. */
    private interface Items {
        void take(ProofItem item) throws IOException;
    }

    private void write(LoadedJob job, ProofViews views, ProofArtwork artwork, Items items) throws IOException {
        List<Row> rows = job.order().rows();
        for (Row row : rows) {
            progress.report("drawing", row.index() + 1, rows.size());
            for (Alike alike : artwork.of(row)) {
                items.take(views.item(alike, artwork.page(alike)));
            }
        }
    }
}
