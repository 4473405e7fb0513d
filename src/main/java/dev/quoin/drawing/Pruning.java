package dev.quoin.drawing;

import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which elements matter when the varying parts are drawn anew. */
final class Pruning {
    private static final Pattern REFERENCE = Pattern.compile("#([^\\s'\"()]+)");

    private static final Set<String> REFERRING = Set.of("href", "clip-path", "style");

    private final Variation variation;
    private final Set<SvgElement> kept = new HashSet<>();
    private final Set<String> referred = new HashSet<>();
    private boolean anyIdMayBeReferred;

    /** Kept are the parts and what stands above them, style sheets, and whatever may be referred to. */
    Pruning(SvgElement root, Variation variation) {
        this.variation = variation;
        root.forEach(element -> {
            element.attributes().forEach(this::note);
            element.content().stream()
                    .filter(text -> element.tag().equals("style") && text instanceof SvgText)
                    .forEach(text -> note(((SvgText) text).text()));
        });
        mark(root, variation.looksAtNeighbours());
    }

    boolean keeps(SvgElement element) {
        return kept.contains(element);
    }

    private void note(SvgAttribute attribute) {
        anyIdMayBeReferred |= attribute.varies() && REFERRING.contains(attribute.localName());
        note(attribute.value().source());
    }

    private void note(String text) {
        Matcher reference = REFERENCE.matcher(text);
        while (reference.find()) {
            referred.add(reference.group(1));
        }
    }

    private boolean mayBeReferred(SvgElement element) {
        boolean isRoot = element.parent().isEmpty();
        return referred.contains(element.id())
                || (anyIdMayBeReferred && !isRoot && !element.id().isEmpty());
    }

    private boolean mark(SvgElement element, boolean insidePart) {
        boolean inside = insidePart || variation.part(element) >= 0 || mayBeReferred(element);
        boolean keep = inside || element.tag().equals("style");
        for (SvgElement child : element.children()) {
            keep |= mark(child, inside);
        }
        if (keep) {
            kept.add(element);
        }
        return keep;
    }
}
