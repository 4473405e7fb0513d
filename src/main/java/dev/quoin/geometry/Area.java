package dev.quoin.geometry;

/**
 * A region to be covered: what a path surrounds under a fill rule.
 *
 * @param outline its boundary; open pieces count as closed
 */
public record Area(Path outline, FillRule rule) {
    public static final Area EMPTY = new Area(Path.EMPTY, FillRule.NON_ZERO);

    public Area transform(Affine move) {
        return new Area(outline.transform(move), rule);
    }

    public boolean isEmpty() {
        return outline.isEmpty();
    }
}
