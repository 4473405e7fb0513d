package dev.quoin.art;

import dev.quoin.order.Variables;
import dev.quoin.problem.Place;
import dev.quoin.problem.Problems;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Finds names of columns between signs that are not a placeholder's, such as {@code {{name}}}: most likely one was meant. */
final class MistakenPlaceholders {
    private static final String SIGNS = "{<«%[$";

    private MistakenPlaceholders() {}

    /** Warns of each in a text that is marked as it stands. */
    static void tell(String literal, Columns columns, Place place, Problems problems) {
        if (literal.chars().noneMatch(c -> SIGNS.indexOf(c) >= 0)) {
            return;
        }
        Pattern form =
                Pattern.compile("\\{\\{([^{}]+)}}|\\{([^{}]+)}|<<([^<>]+)>>|«([^«»]+)»|%([^%]+)%|\\[([^\\[\\]]+)]"
                        + "|\\$([\\p{L}_][\\p{L}\\p{N}_]*)");
        form.matcher(literal).results().forEach(found -> {
            String variable = Variables.name(inside(found));
            columns.ofVariable(variable)
                    .ifPresent(column -> problems.warning(
                            place,
                            "'" + found.group() + "' is taken as it stands, and not as the value of column '"
                                    + columns.header(column).strip() + "'",
                            "write ${" + variable + "} if that is meant"));
        });
    }

    private static String inside(MatchResult found) {
        return IntStream.rangeClosed(1, found.groupCount())
                .mapToObj(found::group)
                .filter(group -> group != null)
                .findFirst()
                .orElseThrow();
    }
}
