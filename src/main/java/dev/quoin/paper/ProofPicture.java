package dev.quoin.paper;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.FillRule;
import dev.quoin.shop.Colour;
import java.util.List;
import java.util.Locale;

/**
 * The picture of a piece, ready for a template: y down, mm of the piece.
 *
 * @param box of all that is drawn, y down
 * @param scale mm on paper for one mm of the piece
 * @param light whether marks are drawn light on dark
 */
public record ProofPicture(Box box, double scale, String blank, String colour, boolean light, List<Drawn> ink) {
    /** The room on paper, mm. */
    private static final double MOST_WIDTH = 104;

    private static final double MOST_HEIGHT = 70;
    private static final double BORDER = 1;
    private static final List<Double> SCALES = List.of(3.0, 2.5, 2.0, 1.5, 1.25, 1.0, 0.75, 0.5, 0.25, 0.1);

    private static final Colour UNKNOWN_COLOUR = new Colour(0xffffff);

    /**
     * An outline.
     *
     * @param kind its class
     * @param path as SVG path data; empty where an outline of that id was drawn before
     */
    public record Drawn(String id, String kind, String path, boolean evenOdd) {}

    static ProofPicture of(ProofItem item, SharedOutlines outlines) {
        Box inked = item.ink().stream()
                .map(ink -> ink.path().bounds())
                .reduce(item.outline().bounds(), Box::union);
        Box shown = inked.grow(BORDER);
        double room = Math.min(MOST_WIDTH / shown.width(), MOST_HEIGHT / shown.height());
        double scale = SCALES.stream().filter(step -> step <= room).findFirst().orElse(room);
        Colour colour = Colour.parse(item.colour()).orElse(UNKNOWN_COLOUR);
        List<Drawn> drawn = item.ink().stream().map(ink -> drawn(ink, outlines)).toList();
        Box flipped = new Box(shown.minX(), -shown.maxY(), shown.maxX(), -shown.minY());
        return new ProofPicture(flipped, scale, PathData.of(item.outline()), colour.hex(), colour.isDark(), drawn);
    }

    private static Drawn drawn(ProofInk ink, SharedOutlines outlines) {
        String kind = ink.kind().name().toLowerCase(Locale.ROOT);
        boolean isNew = outlines.isNew(ink.path(), kind);
        return new Drawn(
                outlines.id(ink.path(), kind),
                kind,
                isNew ? PathData.of(ink.path()) : "",
                ink.rule() == FillRule.EVEN_ODD);
    }

    /** Whether there is room for the piece at its real size beside the large picture. */
    public boolean alsoAtRealSize() {
        return scale >= 1.5 && box.width() <= 72;
    }
}
