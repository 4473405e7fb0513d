package dev.quoin.art;

import dev.quoin.drawing.Element;
import dev.quoin.drawing.Names;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Suggestion;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Finds an element's process: the nearest {@code class} word or {@code id} (a trailing -number ignored), on it or above
 * it, that is a process of any recipe in the shop, or {@code guide}; none: {@code engrave}.
 */
final class ProcessFinder {
    static final String DEFAULT = "engrave";
    static final String GUIDE = "guide";
    private static final Pattern NUMBER = Pattern.compile("-\\d+$");

    private final Set<String> processes;
    private final Set<String> toldLabels = new HashSet<>();

    ProcessFinder(Set<String> shopProcesses) {
        processes = new LinkedHashSet<>(shopProcesses);
        processes.add(GUIDE);
    }

    String find(Element element, Problems problems) {
        for (Names names : element.names()) {
            List<String> words = words(names);
            List<String> found =
                    words.stream().filter(processes::contains).distinct().toList();
            if (found.size() > 1) {
                problems.error(
                        element.place(),
                        element.describe() + " has two processes, " + String.join(" and ", found),
                        "leave one");
            }
            if (!found.isEmpty()) {
                return found.get(0);
            }
            warnOfNearMiss(element, words, problems);
            warnOfLabel(element, names.label(), problems);
        }
        return DEFAULT;
    }

    private void warnOfNearMiss(Element element, List<String> words, Problems problems) {
        for (String word : words) {
            Optional<String> near = Suggestion.nearest(word, processes).filter(name -> word.length() > 2);
            near.ifPresent(name -> problems.warning(
                    element.place(),
                    element.describe() + " is called '" + word + "', which is nearly the process '" + name + "'",
                    "write '" + name + "' if that is meant"));
        }
    }

    /** Once for each label, since a layer may hold hundreds of shapes; not of one that says what is done anyway. */
    private void warnOfLabel(Element element, String label, Problems problems) {
        String word = label.toLowerCase(Locale.ROOT);
        if (processes.contains(word) && !word.equals(DEFAULT) && toldLabels.add(word)) {
            problems.warning(
                    element.place(),
                    element.describe() + " stands under the label '" + label + "', but labels say no process",
                    "give what has the label (a layer, most likely) the id or class '" + word + "' if that is meant");
        }
    }

    private static List<String> words(Names names) {
        List<String> words = new ArrayList<>(names.classes());
        words.add(names.id());
        return words.stream()
                .filter(word -> !word.isEmpty())
                .map(word -> NUMBER.matcher(word).replaceFirst(""))
                .toList();
    }
}
