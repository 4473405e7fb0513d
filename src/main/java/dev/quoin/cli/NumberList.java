package dev.quoin.cli;

import dev.quoin.job.ItemNumbers;
import java.util.Collections;
import java.util.SortedSet;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Numbers given to an option as a list with ranges. */
final class NumberList {
    private NumberList() {}

    /**
     * Reads them; none if the option was not given.
     *
     * @param like what the numbers are, and an example
     * @throws ParameterException if the text is no such list
     */
    static SortedSet<Integer> read(CommandSpec command, String option, String text, String like) {
        if (text.isEmpty()) {
            return Collections.emptySortedSet();
        }
        return ItemNumbers.parse(text)
                .orElseThrow(() -> new ParameterException(
                        command.commandLine(), option + " '" + text + "' is no list of " + like));
    }
}
