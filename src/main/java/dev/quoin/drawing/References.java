package dev.quoin.drawing;

import dev.quoin.problem.Problems;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Where the {@code use} elements of a drawing lead. */
final class References {
    private static final int MOST_ELEMENTS = 100_000;
    private static final int LONGEST_CHAIN = 500;

    private static final Pattern URL = Pattern.compile("url\\(\\s*['\"]?#([^'\")]+?)['\"]?\\s*\\)");

    private final Map<String, SvgElement> byId = new HashMap<>();
    private final Merge merge;

    References(SvgElement root, Merge merge) {
        this.merge = merge;
        root.forEach(element -> {
            if (!element.id().isEmpty()) {
                byId.putIfAbsent(element.id(), element);
            }
        });
    }

    /**
     * What a {@code use} shows, or a {@code textPath} runs along, if its reference is known and leads to an element of
     * the drawing.
     */
    Optional<SvgElement> target(SvgElement element) {
        if (!element.tag().equals("use") && !element.tag().equals("textPath")) {
            return Optional.empty();
        }
        return element.href()
                .flatMap(merge::value)
                .map(String::strip)
                .filter(href -> href.startsWith("#"))
                .map(href -> byId.get(href.substring(1)));
    }

    /** The clip paths that an element names itself, in its attribute or its style. */
    List<SvgElement> clipPaths(SvgElement element) {
        return element.attributes().stream()
                .filter(attribute ->
                        attribute.name().equals("clip-path") || attribute.name().equals("style"))
                .flatMap(attribute -> merge.value(attribute).stream())
                .flatMap(value -> URL.matcher(value).results())
                .map(found -> byId.get(found.group(1)))
                .filter(target -> target != null && target.tag().equals("clipPath"))
                .toList();
    }

    /** Whether the drawing, each {@code use} put out in full, has an end and is not too large; an error if not. */
    boolean areBounded(SvgElement root, Problems problems) {
        return new Expansion(problems).size(root, 0) >= 0;
    }

    /** Counts elements with each {@code use} put out in full; -1 once an error is told. */
    private final class Expansion {
        private final Problems problems;
        private final Map<SvgElement, Long> sizes = new HashMap<>();
        private final Set<SvgElement> open = new HashSet<>();

        Expansion(Problems problems) {
            this.problems = problems;
        }

        long size(SvgElement element, int depth) {
            Long known = sizes.get(element);
            if (known != null) {
                return known;
            }
            if (depth > LONGEST_CHAIN || !open.add(element)) {
                return stop(element, "leads back to itself, or through too many others", "draw it without the <use>");
            }
            long size = 1;
            for (SvgElement child : element.children()) {
                size = add(size, size(child, depth + 1));
            }
            Optional<SvgElement> target = target(element);
            if (target.isPresent()) {
                size = add(size, size(target.get(), depth + 1));
            }
            open.remove(element);
            if (size > MOST_ELEMENTS) {
                size = stop(element, "repeats more than " + MOST_ELEMENTS + " elements", "simplify the drawing");
            }
            sizes.put(element, size);
            return size;
        }

        private long stop(SvgElement element, String what, String remedy) {
            problems.error(element.place(), element.describe() + " " + what, remedy);
            return -1;
        }

        private static long add(long a, long b) {
            return a < 0 || b < 0 ? -1 : a + b;
        }
    }
}
