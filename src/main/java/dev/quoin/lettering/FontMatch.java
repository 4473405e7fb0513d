package dev.quoin.lettering;

import java.util.List;

/** Picks a family's face for a style and weight (CSS Fonts Module Level 4, section 5.2). */
final class FontMatch {
    private static final int NORMAL = 400;
    private static final int MEDIUM = 500;
    /** More than any difference of weights. */
    private static final int FAR = 10_000;

    private FontMatch() {}

    /** The nearest of the faces, of which there is at least one; the first of equals. */
    static FontFace nearest(List<FontFace> faces, int weight, boolean italic) {
        return faces.stream()
                .min((one, other) -> one.italic() == other.italic()
                        ? Integer.compare(distance(weight, one.weight()), distance(weight, other.weight()))
                        : one.italic() == italic ? -1 : 1)
                .orElseThrow();
    }

    /** A light weight looks among the lighter first, a bold one among the bolder, a normal one up to 500 first. */
    private static int distance(int wanted, int weight) {
        int away = Math.abs(weight - wanted);
        if (wanted >= NORMAL && wanted <= MEDIUM) {
            if (weight >= wanted && weight <= MEDIUM) {
                return away;
            }
            return weight < wanted ? FAR + away : 2 * FAR + away;
        }
        boolean rightSide = wanted < NORMAL ? weight <= wanted : weight >= wanted;
        return rightSide ? away : FAR + away;
    }
}
