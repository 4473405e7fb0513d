package dev.quoin.cli;

import dev.quoin.job.ItemNumbers;
import java.util.Collections;
import java.util.SortedSet;
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
    static SortedSet<Integer> read(Option<String> option, String like) {
        String text = option.orElse("");
        if (text.isEmpty()) {
            return Collections.emptySortedSet();
        }
        return ItemNumbers.parse(text)
                .orElseThrow(() -> option.wrong(option.name() + " '" + text + "' is no list of " + like));
    }
}
