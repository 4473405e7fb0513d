package dev.quoin.job;

import dev.quoin.problem.Problem;
import java.util.List;
import java.util.Optional;

/**
 * How a use case ended.
 *
 * @param result what it gives; empty if errors stood in its way
 * @param problems all that was found, sorted
 */
public record Outcome<T>(Optional<T> result, List<Problem> problems) {
    public Outcome {
        problems = List.copyOf(problems);
    }
}
