package dev.quoin.job;

import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/** Item numbers as users write them: {@code 37,52-54}. */
public final class ItemNumbers {
    private static final int MOST = 100_000;

    private ItemNumbers() {}

    /** The numbers, or nothing if the text is none. */
    public static Optional<SortedSet<Integer>> parse(String text) {
        SortedSet<Integer> numbers = new TreeSet<>();
        for (String part : text.split(",", -1)) {
            String range = part.strip();
            if (!range.matches("\\d{1,8}(\\s*-\\s*\\d{1,8})?")) {
                return Optional.empty();
            }
            String[] ends = range.split("-");
            int first = Integer.parseInt(ends[0].strip());
            int last = Integer.parseInt(ends[ends.length - 1].strip());
            if (first < 1 || last < first || last - first >= MOST) {
                return Optional.empty();
            }
            for (int number = first; number <= last; number++) {
                numbers.add(number);
            }
        }
        return Optional.of(numbers);
    }
}
