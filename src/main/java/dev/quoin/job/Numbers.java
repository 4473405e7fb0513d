package dev.quoin.job;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads numbers with commas between, as options give them. */
final class Numbers {
    private static final String PLAIN = "[+-]?(\\d{1,9}(\\.\\d*)?|\\.\\d+)";

    private Numbers() {}

    /** So many plain decimal numbers; nothing if it is not that. */
    static Optional<List<Double>> read(String text, int count) {
        List<String> cells =
                Arrays.stream(text.split(",", -1)).map(String::strip).toList();
        if (cells.size() != count || !cells.stream().allMatch(cell -> cell.matches(PLAIN))) {
            return Optional.empty();
        }
        return Optional.of(cells.stream().map(Double::valueOf).toList());
    }
}
