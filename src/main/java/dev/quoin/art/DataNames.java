package dev.quoin.art;

import dev.quoin.drawing.Element;
import dev.quoin.problem.Problems;
import dev.quoin.problem.Suggestion;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Warns of {@code data-*} attributes that do nothing: misspelt ones, and ours where they are not looked for. Names that
 * are nothing like ours are left alone, since editors write their own.
 */
final class DataNames {
    private static final String FIT = "fit";
    private static final String WHEN = "when";
    private static final String CODE = "code";
    private static final Set<String> HEIGHTS = Set.of("min-height", "max-height");
    private static final Set<String> SIZING = Set.of("lines", "squeeze", "align", "inset", "same-size");
    private static final Set<String> OF_CODES = Set.of("content", "invert");
    private static final List<String> KNOWN = known();
    /** Where {@code data-when} does nothing: it asks about what is drawn. */
    private static final Set<String> NOT_DRAWN =
            Set.of("tspan", "textPath", "defs", "style", "clipPath", "title", "desc");

    private DataNames() {}

    static void check(Element element, Problems problems) {
        for (String name : element.data().keySet()) {
            if (!KNOWN.contains(name)) {
                checkSpelling(element, name, problems);
            } else {
                without(element, name)
                        .ifPresent(lack -> problems.warning(
                                element.place(),
                                element.describe() + " has data-" + name + ", which does nothing " + lack.where(),
                                lack.remedy()));
            }
        }
    }

    private static void checkSpelling(Element element, String name, Problems problems) {
        Optional<String> near = Suggestion.nearest(name, KNOWN).filter(known -> name.length() > 2);
        near.ifPresent(known -> problems.warning(
                element.place(),
                element.describe() + " has data-" + name + ", which is nearly data-" + known,
                "write data-" + known + " if that is meant"));
    }

    private static Optional<Lack> without(Element element, String name) {
        if (name.equals(WHEN)) {
            return Optional.of(new Lack("on a <" + element.tag() + ">", "put it on the element that is drawn"))
                    .filter(lack -> NOT_DRAWN.contains(element.tag()));
        }
        if (name.equals(CODE)) {
            // A shape that is no rectangle is an error of its own.
            return Optional.of(new Lack("on a <" + element.tag() + ">", "put it on a <rect>"))
                    .filter(lack ->
                            Set.of("g", "text", "tspan", "use", "svg", "image").contains(element.tag()));
        }
        if (OF_CODES.contains(name)) {
            return Optional.of(new Lack("without data-code", "add data-code, or take it off"))
                    .filter(lack -> element.data(CODE).isEmpty());
        }
        return ofText(element, name);
    }

    private static Optional<Lack> ofText(Element element, String name) {
        if (!element.tag().equals("text")) {
            return Optional.of(new Lack("on a <" + element.tag() + ">", "put it on the <text>"));
        }
        boolean mayStandAlone =
                name.equals(FIT) || HEIGHTS.contains(name) || element.data(FIT).isPresent();
        return Optional.of(new Lack("without data-fit", "name the shape to fit into with data-fit, or take it off"))
                .filter(lack -> !mayStandAlone
                        && HEIGHTS.stream()
                                .noneMatch(height -> element.data(height).isPresent()));
    }

    private static List<String> known() {
        List<String> known = new ArrayList<>(List.of(FIT, WHEN, CODE));
        known.addAll(HEIGHTS);
        known.addAll(SIZING);
        known.addAll(OF_CODES);
        return known.stream().sorted().toList();
    }

    private record Lack(String where, String remedy) {}
}
