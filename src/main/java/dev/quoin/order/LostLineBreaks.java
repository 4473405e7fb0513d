package dev.quoin.order;

import dev.quoin.problem.Quoted;
import java.util.Optional;

/** Line breaks in values whose texts have no line for them, so that they are set as spaces. */
final class LostLineBreaks implements ColumnDoubts {
    @Override
    public Optional<Doubt> judge(String value) {
        return value.indexOf('\n') < 0 && value.indexOf('\r') < 0
                ? Optional.empty()
                : Optional.of(new Doubt(
                        "a line break in " + Quoted.of(value)
                                + ", which the template has no line for: it becomes a space",
                        "take it out, or give the text more lines with data-lines"));
    }
}
