package dev.quoin.order;

import dev.quoin.problem.Quoted;
import java.util.Optional;

/** Values all in capitals in a column where most are not. Short ones are let pass as abbreviations. */
final class UpperCase implements ColumnDoubts {
    private static final int LEAST_LETTERS = 5;
    private static final int LEAST_OTHERS = 4;
    private static final int OTHERS_TO_ONE = 4;

    private int capitals;
    private int others;

    @Override
    public void see(String value) {
        if (isAllCapitals(value)) {
            capitals++;
        } else if (value.codePoints().anyMatch(Character::isLowerCase)) {
            others++;
        }
    }

    @Override
    public Optional<Doubt> judge(String value) {
        boolean rare = others >= LEAST_OTHERS && others >= OTHERS_TO_ONE * capitals;
        return rare && isAllCapitals(value)
                ? Optional.of(new Doubt(
                        Quoted.of(value) + " is all in capitals, and most of this column is not",
                        "write it as the others, if it is to look like them"))
                : Optional.empty();
    }

    private static boolean isAllCapitals(String value) {
        return value.codePoints().noneMatch(c -> Character.isLowerCase(c) || Character.isDigit(c))
                && value.codePoints().filter(Character::isUpperCase).count() >= LEAST_LETTERS;
    }
}
