package dev.quoin.order;

import dev.quoin.problem.Quoted;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Numbers shorter than the others of their column, where these are filled with zeros in front: a spreadsheet takes such
 * zeros away from what it thinks is a number.
 */
final class LostZeros implements ColumnDoubts {
    private static final int LONGEST = 18;

    private final Map<Integer, Integer> widths = new HashMap<>();
    private final Map<Integer, Integer> filled = new HashMap<>();
    private int all;
    private int numbers;

    @Override
    public void see(String value) {
        all++;
        if (isNumber(value)) {
            numbers++;
            widths.merge(value.length(), 1, Integer::sum);
            if (value.charAt(0) == '0') {
                filled.merge(value.length(), 1, Integer::sum);
            }
        }
    }

    @Override
    public Optional<Doubt> judge(String value) {
        int width = width();
        return isNumber(value) && value.length() < width && value.charAt(0) != '0'
                ? Optional.of(new Doubt(
                        Quoted.of(value) + " is shorter than the " + width
                                + " digits of the others; zeros in front may have been lost",
                        "make the column text in the spreadsheet, and type the number again"))
                : Optional.empty();
    }

    /** The width that most of the column has, if some are filled to it with zeros; 0 if there is none. */
    private int width() {
        return widths.entrySet().stream()
                .filter(entry -> 2 * entry.getValue() > all && 10 * (all - numbers) <= all)
                .map(Map.Entry::getKey)
                .filter(filled::containsKey)
                .findFirst()
                .orElse(0);
    }

    private static boolean isNumber(String value) {
        return value.length() <= LONGEST && value.chars().allMatch(c -> c >= '0' && c <= '9');
    }
}
