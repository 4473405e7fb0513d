package dev.quoin.problem;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Gathers the problems of a whole job, so that they can be told in one go. The same problem twice counts once. Not safe
 * for use by several threads; give each its own and {@link #addAll} them in a fixed order.
 */
public final class Problems {
    private final Set<Problem> found = new LinkedHashSet<>();
    private int errors;

    public void add(Problem problem) {
        if (found.add(problem) && problem.isError()) {
            errors++;
        }
    }

    public void addAll(Problems others) {
        others.found.forEach(this::add);
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

    /** All problems, by place, the worst first at each. */
    public List<Problem> sorted() {
        return found.stream().sorted().toList();
    }
}
