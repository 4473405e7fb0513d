package dev.quoin.job;

import dev.quoin.store.LogBook;
import dev.quoin.store.RunEvent;
import java.util.HashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * How far the work on a run is, from its record. An item that is reprinted without having been recorded as failed counts
 * as failed, for the reprint's reason.
 *
 * @param plates those that are done
 * @param failed items that failed and for which no reprint is made yet, with the reason
 * @param reprinted items for which a reprint is made that is not yet done, with its file
 * @param redone items whose reprint is done
 * @param failures how many items failed, by reason; one that failed twice counts twice
 */
record RunProgress(
        SortedSet<Integer> plates,
        SortedMap<Integer, String> failed,
        SortedMap<Integer, String> reprinted,
        SortedSet<Integer> redone,
        SortedMap<String, Integer> failures) {
    private RunProgress() {
        this(new TreeSet<>(), new TreeMap<>(), new TreeMap<>(), new TreeSet<>(), new TreeMap<>());
    }

    /** Reads the record; what it says of things that the run has not is passed over. */
    static RunProgress of(RunBook book, LogBook log) {
        RunProgress progress = new RunProgress();
        Map<String, SortedSet<Integer>> inFile = new HashMap<>();
        for (RunEvent event : log.events()) {
            boolean known = event.item() == 0
                    ? event.plate() == 0 || book.plates().containsKey(event.plate())
                    : book.items().containsKey(event.item());
            if (known) {
                progress.take(event, inFile);
            }
        }
        return progress;
    }

    private void take(RunEvent event, Map<String, SortedSet<Integer>> inFile) {
        switch (event.kind()) {
            case DONE -> done(event, inFile.getOrDefault(event.file(), new TreeSet<>()));
            case FAILED -> fail(event);
            case REPRINTED -> {
                if (!failed.containsKey(event.item()) && !reprinted.containsKey(event.item())) {
                    fail(event);
                }
                failed.remove(event.item());
                reprinted.put(event.item(), event.file());
                inFile.computeIfAbsent(event.file(), file -> new TreeSet<>()).add(event.item());
            }
        }
    }

    private void done(RunEvent event, SortedSet<Integer> items) {
        if (event.file().isEmpty()) {
            plates.add(event.plate());
        }
        for (int item : items) {
            // Of two reprints that were made for it, one is enough.
            if (reprinted.remove(item) != null) {
                redone.add(item);
            }
        }
    }

    private void fail(RunEvent event) {
        failed.put(event.item(), event.reason());
        reprinted.remove(event.item());
        redone.remove(event.item());
        failures.merge(event.reason(), 1, Integer::sum);
    }
}
