package dev.quoin.job;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.store.LogBook;
import dev.quoin.store.ReprintFolder;
import dev.quoin.store.Run;
import dev.quoin.store.RunLog;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;

/** Says how far the work on a run is. */
public final class Status {
    private final Path folder;

    public Status(Path folder) {
        this.folder = folder;
    }

    /**
     * How far it is.
     *
     * @param plates how many there are
     * @param next the first plate that is not done; 0 if none is left
     * @param failures how many items failed, by reason; one that failed twice counts twice
     * @param redone how many items were marked again
     * @param toReprint items that failed and for which no reprint is made yet
     * @param toMark items whose reprint is still to be marked
     * @param secondsLeft of plates and reprints not done, without setting up, s
     */
    public record Report(
            String run,
            int plates,
            int platesDone,
            int next,
            int items,
            SortedMap<String, Integer> failures,
            int redone,
            List<Integer> toReprint,
            List<Integer> toMark,
            double secondsLeft) {
        /** How many items failed in all. */
        public int failed() {
            return failures.values().stream().mapToInt(Integer::intValue).sum();
        }
    }

    /**
     * Reads the run's tables and its record.
     *
     * @throws IOException if the run cannot be read, or is not as it was prepared
     */
    public Outcome<Report> run() throws IOException {
        Problems problems = new Problems();
        Run run = Run.open(folder);
        RunBook book = RunBook.of(run);
        LogBook log = new RunLog(run.folder()).read();
        log.damaged()
                .forEach(line -> problems.warning(
                        Place.of(RunLog.FILE, line),
                        "not as it was added, so it does not count",
                        "restore it from a copy"));
        RunProgress progress = RunProgress.of(book, log);
        SortedSet<Integer> left = new TreeSet<>(book.plates().keySet());
        left.removeAll(progress.plates());
        double seconds = reprintSeconds(run, new TreeSet<>(progress.reprinted().values()));
        for (int plate : left) {
            seconds += book.plates().get(plate).seconds();
        }
        Report report = new Report(
                run.name(),
                book.plates().size(),
                progress.plates().size(),
                left.isEmpty() ? 0 : left.first(),
                book.items().size(),
                progress.failures(),
                progress.redone().size(),
                List.copyOf(progress.failed().keySet()),
                List.copyOf(progress.reprinted().keySet()),
                seconds);
        return new Outcome<>(Optional.of(report), problems.sorted());
    }

    private static double reprintSeconds(Run run, SortedSet<String> files) throws IOException {
        double seconds = 0;
        for (int number : new ReprintFolder(run.folder()).whole()) {
            if (files.contains(ReprintFolder.name(number, "svg"))) {
                seconds += ReprintCsv.seconds(run.reprintTable(number));
            }
        }
        return seconds;
    }
}
