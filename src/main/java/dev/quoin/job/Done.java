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
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeMap;

/** Records that a plate or a reprint is done, how long it took by the clock, and which of its items failed. */
public final class Done {
    private final Path folder;
    private final Loading loading;
    private final OptionalDouble took;
    private final SortedSet<Integer> failed;
    private final String reason;
    private final Clock clock;
    private final Problems problems = new Problems();

    /**
     * One loading of the jig.
     *
     * @param number the plate's, or the reprint's
     */
    public record Loading(boolean reprint, int number) {
        @Override
        public String toString() {
            return (reprint ? "reprint " : "plate ") + number;
        }
    }

    /**
     * What was recorded.
     *
     * @param failed the items that failed
     * @param plates how many are done now
     * @param of how many the run has
     */
    public record Recorded(Loading loading, OptionalDouble took, SortedSet<Integer> failed, int plates, int of) {}

    /**
     * Sets up.
     *
     * @param took by the clock, s
     * @param failed numbers of items; may be empty
     * @param reason why they failed; may be empty
     */
    public Done(
            Path folder, Loading loading, OptionalDouble took, SortedSet<Integer> failed, String reason, Clock clock) {
        this.folder = folder;
        this.loading = loading;
        this.took = took;
        this.failed = failed;
        this.reason = reason;
        this.clock = clock;
    }

    /**
     * Adds to the record.
     *
     * @return nothing, and nothing recorded, if the run has no such plate or an item is not on it
     * @throws IOException if the run cannot be read or the record not be written
     */
    public Outcome<Recorded> run() throws IOException {
        Run run = Run.open(folder);
        RunBook book = RunBook.of(run);
        Map<Integer, String> slots = loading.reprint() ? slotsOfReprint(run) : slotsOfPlate(book);
        if (!problems.hasErrors()) {
            failed.stream().filter(item -> !slots.containsKey(item)).forEach(item -> tellNotThere(item, book));
        }
        // The record is opened, and so made, only once nothing is refused: what is leaves nothing behind.
        if (problems.hasErrors()) {
            return new Outcome<>(Optional.empty(), problems.sorted());
        }
        RunLog log = new RunLog(run.folder());
        log.addAfter(now -> events(book, slots, now));
        int done = RunProgress.of(book, log.read()).plates().size();
        Recorded recorded =
                new Recorded(loading, took, failed, done, book.plates().size());
        return new Outcome<>(Optional.of(recorded), problems.sorted());
    }

    private void tellNotThere(int item, RunBook book) {
        problems.error(
                Place.of("--failed"),
                "item " + item + " is not on " + loading,
                book.items().containsKey(item)
                        ? "it is on plate " + book.items().get(item).plate()
                        : "the run has no such item");
    }

    private List<RunEvent> events(RunBook book, Map<Integer, String> slots, LogBook log) {
        List<RunEvent> events = new ArrayList<>();
        Optional<RunEvent> before = log.events().stream()
                .filter(event -> event.kind() == RunEvent.Kind.DONE
                        && event.file().equals(file())
                        && (loading.reprint() || event.plate() == loading.number()))
                .findFirst();
        before.ifPresent(event -> problems.note(
                Place.of(RunLog.FILE), loading + " was recorded as done at " + event.at() + " already", ""));
        if (before.isEmpty() || took.isPresent()) {
            events.add(event(RunEvent.Kind.DONE, loading.reprint() ? 0 : loading.number(), 0, "", took));
        }
        for (int item : failed) {
            int plate = book.items().get(item).plate();
            events.add(event(RunEvent.Kind.FAILED, plate, item, slots.get(item), OptionalDouble.empty()));
        }
        return events;
    }

    private Map<Integer, String> slotsOfPlate(RunBook book) {
        Map<Integer, String> slots = new TreeMap<>();
        book.itemsOf(loading.number()).forEach(item -> slots.put(item.number(), item.slot()));
        if (!book.plates().containsKey(loading.number())) {
            problems.error(
                    Place.of("plates.csv"),
                    "the run has no plate " + loading.number(),
                    book.plates().size() == 1
                            ? "its one plate is 1"
                            : "its plates are 1 to " + book.plates().lastKey());
        }
        return slots;
    }

    private Map<Integer, String> slotsOfReprint(Run run) throws IOException {
        Map<Integer, String> slots = new TreeMap<>();
        if (new ReprintFolder(run.folder()).whole().contains(loading.number())) {
            run.reprintTable(loading.number())
                    .rows()
                    .forEach(row ->
                            slots.put(Integer.valueOf(ReprintCsv.cell(row, "item")), ReprintCsv.cell(row, "slot")));
        } else {
            problems.error(
                    Place.of(ReprintFolder.NAME),
                    "the run has no reprint " + loading.number(),
                    "see its number on its sheet");
        }
        return slots;
    }

    private String file() {
        return loading.reprint() ? ReprintFolder.name(loading.number(), "svg") : "";
    }

    private RunEvent event(RunEvent.Kind kind, int plate, int item, String slot, OptionalDouble seconds) {
        Instant now = clock.instant().truncatedTo(ChronoUnit.SECONDS);
        return new RunEvent(now, kind, plate, item, slot, seconds, item == 0 ? "" : reason, file());
    }
}
