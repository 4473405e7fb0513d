package dev.quoin.lettering;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A text that cannot be set, since no listed font has all its characters.
 *
 * @param codePoints what is missing, each once, in the order of the text; at least one
 * @param families the families that were tried
 */
public record MissingCharacters(List<Integer> codePoints, List<String> families)
        implements Typeset, SetLine, FitResult {
    private static final int MOST_NAMED = 5;

    /** What is wrong, for a person; no full stop. */
    public String message() {
        String named =
                codePoints.stream().limit(MOST_NAMED).map(Characters::describe).collect(Collectors.joining(", "));
        String more = codePoints.size() > MOST_NAMED ? " and " + (codePoints.size() - MOST_NAMED) + " more" : "";
        return "no glyph for " + named + more + " in " + String.join(", ", families);
    }

    /** What to do about it; no full stop. */
    public String remedy() {
        boolean control = codePoints.stream().allMatch(Character::isISOControl);
        return control
                ? "take the control character out"
                : "add a font that has it to the folder of fonts and name it in font-family, or change the text";
    }
}
