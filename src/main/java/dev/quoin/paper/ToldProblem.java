package dev.quoin.paper;

import dev.quoin.problem.Place;
import dev.quoin.problem.Problem;
import dev.quoin.problem.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A problem as papers tell it: what is the same in many lines of a file is told once, with the lines.
 *
 * @param place the file with its line and column, or with its lines
 */
public record ToldProblem(Severity severity, String place, String text) {
    private static final int MOST_LINES = 20;

    /** All of them, the gravest kind first, each kind in the order given. */
    static List<ToldProblem> of(List<Problem> problems) {
        Map<List<Object>, List<Problem>> alike = new LinkedHashMap<>();
        for (Problem problem : problems) {
            alike.computeIfAbsent(
                            List.of(problem.severity(), problem.place().file(), text(problem)),
                            made -> new ArrayList<>())
                    .add(problem);
        }
        return alike.values().stream()
                .map(ToldProblem::told)
                .sorted(Comparator.comparing(ToldProblem::severity))
                .toList();
    }

    private static ToldProblem told(List<Problem> alike) {
        Problem first = alike.get(0);
        return new ToldProblem(first.severity(), place(alike), text(first));
    }

    private static String place(List<Problem> alike) {
        Place first = alike.get(0).place();
        List<String> lines = alike.stream()
                .map(problem -> Integer.toString(problem.place().line()))
                .distinct()
                .toList();
        if (lines.size() == 1) {
            return first.toString();
        }
        String shown = String.join(", ", lines.subList(0, Math.min(MOST_LINES, lines.size())));
        return first.file() + ", lines " + shown + (lines.size() > MOST_LINES ? " and more" : "");
    }

    private static String text(Problem problem) {
        String item = problem.item() > 0 ? "item " + problem.item() + ": " : "";
        return item + problem.said() + (problem.remedy().isEmpty() ? "" : "; " + problem.remedy());
    }
}
