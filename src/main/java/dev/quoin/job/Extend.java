package dev.quoin.job;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import dev.quoin.store.Run;
import dev.quoin.store.RunFolder;
import dev.quoin.store.RunLog;
import dev.quoin.table.Table;
import dev.quoin.table.TableReader;
import dev.quoin.table.TableRow;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;

/**
 * Prepares what was added to the order of a run: new plates with numbers that follow on, in numbered files beside those that
 * were prepared, which stay as they are. The shop, the jig and the templates are those that the run keeps.
 */
public final class Extend {
    private final Path folder;
    private final Path newOrder;
    private final SortedSet<Integer> added;
    private final Progress progress;
    private final Problems problems = new Problems();
    private Optional<Extension> extension = Optional.empty();

    /**
     * Sets up.
     *
     * @param newOrder the order as it is now, with all its rows
     * @param added the lines of the rows that are added, needed where others were changed or are gone; else empty
     */
    public Extend(Path folder, Path newOrder, SortedSet<Integer> added, Progress progress) {
        this.folder = folder;
        this.newOrder = newOrder;
        this.added = added;
        this.progress = progress;
    }

    /**
     * What was added.
     *
     * @param section its number, from 2
     * @param firstPlate the number of its first plate
     */
    public record Extension(int section, int firstPlate, RunSummary summary) {}

    /**
     * Prepares it, whole or not at all.
     *
     * @return nothing, and nothing written, where there are errors or no rows were added
     * @throws IOException if the run or the order cannot be read, or the run was changed, or it cannot be written
     */
    public Outcome<Extension> run() throws IOException {
        if (!Files.isRegularFile(newOrder)) {
            throw new NoSuchFileException(newOrder.toString(), null, "there is no such order; check its name");
        }
        Path runFolder = Run.open(folder).folder();
        new RunLog(runFolder).addAfter(now -> {
            RunFolder.endExtension(runFolder);
            extend(Run.open(runFolder));
            return List.of();
        });
        return new Outcome<>(extension, problems.sorted());
    }

    private void extend(Run run) throws IOException {
        int last = run.sections();
        Table before = RunOrder.kept(run, last);
        Optional<Table> after = TableReader.read(
                newOrder.getFileName().toString(),
                Files.readAllBytes(newOrder),
                JobLoader.separator(RunShop.settings(run, 1), problems),
                problems);
        if (after.isEmpty() || problems.hasErrors()) {
            return;
        }
        OrderChange change = new OrderChange(before, after.get());
        SortedSet<Integer> lines = change.added(added, problems);
        if (problems.hasErrors()) {
            return;
        }
        if (lines.isEmpty()) {
            problems.note(Place.of(after.get().file()), "no row was added since the run was prepared", "");
            return;
        }
        List<TableRow> rows = new ArrayList<>();
        for (TableRow row : RunOrder.through(run, last).rows()) {
            rows.add(new TableRow(change.lineOf(row.cells()), row.cells()));
        }
        RunBook book = RunBook.of(run);
        Section section = new Section(last + 1, rows.size(), book.plates().lastKey());
        after.get().rows().stream().filter(row -> lines.contains(row.line())).forEach(rows::add);
        prepare(run, section, after.get().withRows(rows), lines);
    }

    private void prepare(Run run, Section section, Table order, SortedSet<Integer> lines) throws IOException {
        Problems found = new Problems();
        Optional<LoadedJob> job = new JobLoader(RunJob.settings(run, newOrder), found)
                .extending(section, order, KeptFiles.of(run), RunSpares.through(run, run.sections()))
                .load();
        dropOld(found, order.rows().subList(0, section.firstRow()), order.file());
        if (job.isEmpty()) {
            return;
        }
        Optional<Plan> plan = new Planning(job.get(), problems, progress).plan();
        if (plan.isEmpty()) {
            return;
        }
        try (RunFolder out = RunFolder.extend(run.folder(), section.number())) {
            RunSummary summary =
                    new RunWriter(job.get().making(plan.get().items()), plan.get(), problems, out, progress).write();
            RunOrder.writeAdded(out, section.number(), lines);
            out.publish();
            extension =
                    Optional.of(new Extension(section.number(), section.platesBefore() + 1, summary.at(run.folder())));
        }
    }

    /** What is wrong with rows that were prepared before was told then. */
    private void dropOld(Problems found, List<TableRow> old, String file) {
        Set<Integer> lines = new HashSet<>();
        old.forEach(row -> lines.add(row.line()));
        for (Problem problem : found.sorted()) {
            boolean isOld = problem.place().file().equals(file)
                    && lines.contains(problem.place().line());
            if (!isOld) {
                problems.add(problem);
            }
        }
    }
}
