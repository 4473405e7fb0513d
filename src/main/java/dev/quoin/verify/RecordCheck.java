package dev.quoin.verify;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import dev.quoin.store.LogBook;
import dev.quoin.store.ReprintFolder;
import dev.quoin.store.RunEvent;
import dev.quoin.store.RunLog;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;

/** The record of the run: each line as it was added, and about things that the run has. */
public final class RecordCheck {
    private final RunClaims claims;
    private final SortedSet<Integer> reprints;
    private final Problems problems;

    /**
     * Sets up.
     *
     * @param reprints the numbers of those that are whole
     */
    public RecordCheck(RunClaims claims, SortedSet<Integer> reprints, Problems problems) {
        this.claims = claims;
        this.reprints = reprints;
        this.problems = problems;
    }

    /** Tells which lines are not as they were added. */
    public static void checkLines(LogBook log, Problems problems) {
        log.damaged()
                .forEach(line -> problems.error(
                        Place.of(RunLog.FILE, line),
                        ListedFiles.CHANGED,
                        "restore it from a copy; until then the line counts for nothing"));
        log.cutShort()
                .forEach(line -> problems.note(
                        Place.of(RunLog.FILE, line), "cut short when a program was ended; it counts for nothing", ""));
    }

    /** Checks what the lines say. */
    public void check(LogBook log) {
        Map<Integer, ItemClaim> items = claims.byNumber();
        Set<Integer> plates = claims.filesByPlate().keySet();
        Set<String> unrecorded = new HashSet<>();
        reprints.forEach(number -> unrecorded.add(ReprintFolder.name(number, "svg")));
        Set<String> files = Set.copyOf(unrecorded);
        for (RunEvent event : log.events()) {
            if (event.plate() > 0 && !plates.contains(event.plate())) {
                wrong(event, "of plate " + event.plate() + ", which the run has not");
            }
            if (event.item() > 0 && !items.containsKey(event.item())) {
                wrong(event, "of item " + event.item() + ", which the run has not");
            }
            if (!event.file().isEmpty() && !files.contains(event.file())) {
                wrong(event, "of " + event.file() + ", which is missing");
            }
            unrecorded.remove(event.file());
        }
        unrecorded.forEach(file ->
                problems.note(Place.of(file), "the record has no word of it, since a program was ended before", ""));
    }

    private void wrong(RunEvent event, String what) {
        problems.error(
                Place.of(RunLog.FILE), "it tells at " + event.at() + " " + what, "restore the run folder from a copy");
    }
}
