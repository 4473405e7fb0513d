package dev.quoin.problem;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Gathers the problems of a whole job, so that they can be told in one go. The same problem twice counts once. Not safe
 * for use by several threads; give each its own and {@link #addAll} them in a fixed order.
 */
public final class Problems {
    /** Of a million wrong rows no one reads the last: so many errors are kept, and as many warnings and notes. */
    public static final int MOST = 100_000;

    private final Set<Problem> found = new LinkedHashSet<>();
    private int errors;
    private int others;
    private int dropped;
    private String droppedOf = "";

    public void add(Problem problem) {
        if (!problem.isError() && others >= MOST) {
            dropped++;
            droppedOf = problem.place().file();
        } else if (found.add(problem)) {
            errors += problem.isError() ? 1 : 0;
            others += problem.isError() ? 0 : 1;
        }
    }

    public void addAll(Problems more) {
        more.found.forEach(this::add);
        if (more.dropped > 0) {
            dropped += more.dropped;
            droppedOf = more.droppedOf;
        }
    }

    /** Whether there are so many errors that looking for more is of no use. Errors are never dropped. */
    public boolean tooMany() {
        return errors >= MOST;
    }

    public void error(Place place, String message, String remedy) {
        add(Problem.error(place, message, remedy));
    }

    public void warning(Place place, String message, String remedy) {
        add(Problem.warning(place, message, remedy));
    }

    public void note(Place place, String message, String remedy) {
        add(Problem.note(place, message, remedy));
    }

    /** The number of errors so far; compare two readings to see whether a stage found any. */
    public int errors() {
        return errors;
    }

    public boolean hasErrors() {
        return errors > 0;
    }

    /** All problems, by place, the worst first at each; of those too many to keep, how many they are. */
    public List<Problem> sorted() {
        Stream<Problem> rest = dropped == 0
                ? Stream.empty()
                : Stream.of(Problem.note(Place.of(droppedOf), dropped + " more warnings and notes are not listed", ""));
        return Stream.concat(found.stream(), rest).sorted().toList();
    }
}
