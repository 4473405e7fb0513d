package dev.quoin.job;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Severity;
import dev.quoin.table.Table;
import dev.quoin.table.TableRow;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What became of an order: a row of the old one is found again wherever a row with the same cells stands in the new one, as
 * often as it stands there. A row that is not found again was changed or is gone; which one of the new rows it became,
 * nobody can know, so then the user says which rows are added.
 */
final class OrderChange {
    private final Table before;
    private final Table after;
    private final Map<List<String>, Deque<Integer>> linesOf = new HashMap<>();
    private final SortedSet<Integer> fresh = new TreeSet<>();
    private final List<TableRow> lost = new ArrayList<>();

    OrderChange(Table before, Table after) {
        this.before = before;
        this.after = after;
        Map<List<String>, Integer> known = new HashMap<>();
        before.rows().forEach(row -> known.merge(row.cells(), 1, Integer::sum));
        for (TableRow row : after.rows()) {
            int left = known.getOrDefault(row.cells(), 0);
            if (left > 0) {
                known.put(row.cells(), left - 1);
                linesOf.computeIfAbsent(row.cells(), cells -> new ArrayDeque<>())
                        .add(row.line());
            } else {
                fresh.add(row.line());
            }
        }
        Map<List<String>, Integer> found = new HashMap<>();
        linesOf.forEach((cells, lines) -> found.put(cells, lines.size()));
        for (TableRow row : before.rows()) {
            if (found.merge(row.cells(), -1, Integer::sum) < 0) {
                lost.add(row);
            }
        }
    }

    /**
     * The lines of the new order whose rows are added.
     *
     * @param named those that the user says are; none if the order is to tell
     */
    SortedSet<Integer> added(Set<Integer> named, Problems problems) {
        if (!before.headers().equals(after.headers())) {
            problems.error(
                    after.headerPlace(0),
                    "other columns than the run was prepared with: " + String.join(", ", before.headers()),
                    "keep the columns, or prepare a new run");
            return new TreeSet<>();
        }
        for (int line : named) {
            if (!fresh.contains(line)) {
                problems.error(
                        Place.of(after.file(), line),
                        "no row that is added begins on this line",
                        "name lines of rows that the run was not prepared with");
            }
        }
        tellLost(named.isEmpty() ? Severity.ERROR : Severity.WARNING, problems);
        return named.isEmpty() ? fresh : new TreeSet<>(named);
    }

    private void tellLost(Severity severity, Problems problems) {
        if (lost.isEmpty()) {
            return;
        }
        for (TableRow row : lost) {
            problems.add(new Problem(
                    severity,
                    Place.of(before.file() + " of the run", row.line()),
                    0,
                    "changed or gone since: " + String.join(", ", row.cells()),
                    severity == Severity.ERROR
                            ? "undo the change, or name the lines of " + after.file()
                                    + " that are added with --add; what was prepared stays as it is"
                            : "what was prepared for it stays as it is"));
        }
        for (int line : fresh) {
            problems.note(Place.of(after.file(), line), "added or changed since the run was prepared", "");
        }
    }

    /** A line of the new order on which a row of the old one stands; each is given once; 0 if there is none left. */
    int lineOf(List<String> cells) {
        Deque<Integer> lines = linesOf.getOrDefault(cells, new ArrayDeque<>());
        return lines.isEmpty() ? 0 : lines.remove();
    }
}
