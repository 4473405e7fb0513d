package dev.quoin.job;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.store.LogBook;
import dev.quoin.store.ReprintFolder;
import dev.quoin.store.Run;
import dev.quoin.store.RunEvent;
import dev.quoin.store.RunLog;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;

/**
 * Marks items again: their marks are read from the plate files, so that they are the same to the last digit, and written to
 * a file of their own for each loading of the jig. What the manifest lists is not touched.
 */
public final class Reprint {
    static final Place PLATE_FORMAT = Place.of("--" + JobKey.PLATE_FORMAT.option());
    static final Place SHEET = Place.of("--" + JobKey.SHEET.option());

    private final Path folder;
    private final ReprintRequest request;
    private final Clock clock;
    private final HeadStart ahead;

    /**
     * Sets up.
     *
     * @param folder the run's
     * @param ahead what the program has begun already
     */
    public Reprint(Path folder, ReprintRequest request, Clock clock, HeadStart ahead) {
        this.folder = folder;
        this.request = request;
        this.clock = clock;
        this.ahead = ahead;
    }

    /**
     * A reprint that was written.
     *
     * @param number from 1
     * @param files its plate files, from the run folder, one a part
     * @param sheet its paper, from the run folder
     * @param plates those that the items were prepared for
     * @param seconds marking and handling, s
     */
    public record Written(
            int number,
            List<String> files,
            String sheet,
            SortedSet<Integer> plates,
            List<Integer> items,
            double seconds) {
        /** The first of them, whose name the record has. */
        public String file() {
            return files.get(0);
        }
    }

    /**
     * Writes the reprints, and the record.
     *
     * @return nothing if an item, the slot or a step is not in the run
     * @throws IOException if the run cannot be read, or is not as it was prepared, or the reprint cannot be written
     */
    public Outcome<List<Written>> run() throws IOException {
        Problems problems = new Problems();
        List<Written> written = new ArrayList<>();
        Kinds.plates(request.plateFormats(), PLATE_FORMAT, problems);
        Kinds.papers(request.sheets(), SHEET, problems);
        Run run = Run.open(folder);
        RunLog log = new RunLog(run.folder());
        LogBook seen = log.read();
        List<ReprintedPlate> plates = plates(run, seen, problems);
        // The record is opened, and so made, only once nothing is refused: what is leaves nothing behind.
        if (!problems.hasErrors()) {
            ahead.papers();
            log.addAfter(now -> write(run, now.equals(seen) ? plates : plates(run, now, problems), problems, written));
        }
        return new Outcome<>(problems.hasErrors() ? Optional.empty() : Optional.of(written), problems.sorted());
    }

    /** The loadings of the jig that are asked for, by what the record says. */
    private List<ReprintedPlate> plates(Run run, LogBook log, Problems problems) throws IOException {
        RunBook book = RunBook.of(run);
        List<RunItem> items = new ReprintItems(request, book, problems).find(log);
        if (problems.hasErrors()) {
            return List.of();
        }
        return new ReprintPlan(request, new PlateShelf(run, book), new GroupKeys(run, book), problems).plates(items);
    }

    /** Under the lock, so that items that failed are not taken twice, nor numbers. */
    private List<RunEvent> write(Run run, List<ReprintedPlate> plates, Problems problems, List<Written> written)
            throws IOException {
        if (problems.hasErrors()) {
            return List.of();
        }
        ReprintFolder reprints = new ReprintFolder(run.folder());
        try {
            return writeAll(plates, new ReprintWriter(run.name(), request, reprints), reprints.next(), written);
        } catch (IOException e) {
            // None of them is in the record yet, so none may stay.
            for (Written one : written) {
                reprints.withdraw(one.number());
            }
            throw e;
        }
    }

    private List<RunEvent> writeAll(List<ReprintedPlate> plates, ReprintWriter writer, int first, List<Written> written)
            throws IOException {
        List<RunEvent> events = new ArrayList<>();
        int number = first;
        for (ReprintedPlate plate : plates) {
            Written one = writer.write(number++, plate);
            written.add(one);
            for (RunItem row : plate.rows()) {
                events.add(event(row, plate.slotOf(row.number()), one));
            }
        }
        return events;
    }

    private RunEvent event(RunItem row, String slot, Written written) {
        return new RunEvent(
                clock.instant().truncatedTo(ChronoUnit.SECONDS),
                RunEvent.Kind.REPRINTED,
                row.plate(),
                row.number(),
                slot,
                OptionalDouble.empty(),
                request.reason(),
                written.file());
    }
}
