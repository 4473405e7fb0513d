package dev.quoin.order;

import dev.quoin.problem.Quoted;
import java.util.Optional;

/**
 * Blanks inside a value that are not single spaces. Line breaks and the wide space of Chinese and Japanese are none of them.
 */
final class OddBlanks implements ColumnDoubts {
    private static final String REMEDY = "make it one space, or take it out";

    @Override
    public Optional<Doubt> judge(String value) {
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            if (c == ' ' && i > 0 && value.charAt(i - 1) == ' ') {
                return Optional.of(new Doubt("two spaces side by side in " + Quoted.of(value), REMEDY));
            }
            if (isOdd(c)) {
                String name = c == '\t' ? "a tab" : "a blank that is no plain space (" + name(c) + ")";
                return Optional.of(new Doubt(name + " in " + Quoted.of(value), REMEDY));
            }
        }
        return Optional.empty();
    }

    private static String name(char c) {
        return Quoted.number(c) + " " + Character.getName(c);
    }

    private static boolean isOdd(char c) {
        boolean space = Character.getType(c) == Character.SPACE_SEPARATOR && c != ' ' && c != '\u3000';
        return space || c == '\t';
    }
}
