package dev.quoin.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which parts of a drawing must be drawn anew for each row. */
final class Variation {
    private final References references;
    /** Whether an element, or one below it, looks different from row to row. */
    private final Map<SvgElement, Boolean> holds = new HashMap<>();

    private final Map<SvgElement, Integer> roots = new HashMap<>();
    private final Set<SvgElement> above = new HashSet<>();
    private final List<SvgAttribute> attributes = new ArrayList<>();
    private final List<SvgElement> owners = new ArrayList<>();
    /** Whether the style sheets look at an element's neighbours. */
    private final boolean neighbours;

    Variation(SvgElement root, References references) {
        this.references = references;
        this.neighbours = looksAtNeighbours(root);
        root.forEach(element -> element.attributes().stream()
                .filter(SvgAttribute::varies)
                .forEach(attribute -> {
                    attributes.add(attribute);
                    owners.add(element);
                }));
        if (sheetClipsByVarying(root)) {
            roots.put(root, 0);
        } else {
            find(root);
        }
    }

    /** The attributes with placeholders, in document order; {@link #owners} are theirs. */
    List<SvgAttribute> attributes() {
        return attributes;
    }

    List<SvgElement> owners() {
        return owners;
    }

    /** The number of parts. */
    int size() {
        return roots.size();
    }

    /** The number of the part that starts at this element; -1 if none does. */
    int part(SvgElement element) {
        return roots.getOrDefault(element, -1);
    }

    /** Whether a part starts at this element or below it. */
    boolean leadsToPart(SvgElement element) {
        return above.contains(element) || roots.containsKey(element);
    }

    /** Whether the style of an element may depend on its neighbours. */
    boolean looksAtNeighbours() {
        return neighbours;
    }

    private boolean find(SvgElement element) {
        boolean starts =
                varies(element) || (neighbours && element.children().stream().anyMatch(this::varies));
        if (starts) {
            roots.put(element, roots.size());
            return true;
        }
        int before = roots.size();
        boolean leads = false;
        for (SvgElement child : element.children()) {
            leads |= find(child);
        }
        if (leads && isClippedByItsBox(element)) {
            roots.values().removeIf(index -> index >= before);
            roots.put(element, before);
        } else if (leads) {
            above.add(element);
        }
        return leads;
    }

    private boolean varies(SvgElement element) {
        return element.attributes().stream().anyMatch(SvgAttribute::varies)
                || references.target(element).map(this::holdsVarying).orElse(false)
                || references.clipPaths(element).stream().anyMatch(this::holdsVarying);
    }

    /** What stands in the box of all its shapes cannot be drawn without all of them. */
    private boolean isClippedByItsBox(SvgElement element) {
        return references.clipPaths(element).stream()
                .anyMatch(clip -> clip.attribute("clipPathUnits").isPresent());
    }

    /** Which elements a style sheet clips is not known before they are drawn, so all of them vary. */
    private boolean sheetClipsByVarying(SvgElement root) {
        boolean[] found = new boolean[2];
        root.forEach(element -> {
            found[0] |= element.tag().equals("clipPath") && holdsVarying(element);
            found[1] |= element.tag().equals("style")
                    && element.content().stream()
                            .anyMatch(text ->
                                    text instanceof SvgText t && t.text().contains("clip-path"));
        });
        return found[0] && found[1];
    }

    private boolean holdsVarying(SvgElement element) {
        Boolean known = holds.get(element);
        if (known == null) {
            // A clip path that leads back to itself ends here; drawing it tells the error.
            holds.put(element, false);
            known = varies(element) || element.children().stream().anyMatch(this::holdsVarying);
            holds.put(element, known);
        }
        return known;
    }

    /** A rule with {@code +}, {@code ~} or {@code :first-child} may change an element when the one beside it changes. */
    private static boolean looksAtNeighbours(SvgElement root) {
        boolean[] found = new boolean[1];
        root.forEach(element -> {
            if (element.tag().equals("style")) {
                element.content().stream()
                        .filter(SvgText.class::isInstance)
                        .map(text -> ((SvgText) text).text())
                        .filter(text -> text.contains("+") || text.contains("~") || text.contains("-child"))
                        .forEach(text -> found[0] = true);
            }
        });
        return found[0];
    }
}
