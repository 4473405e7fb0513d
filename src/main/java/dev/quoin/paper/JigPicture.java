package dev.quoin.paper;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The picture of a jig with its slots where their numbers put them, ready for a template: y down, mm of the field.
 *
 * @param box of all that is drawn, y down
 * @param width of the picture on paper, mm
 * @param height of the picture on paper, mm
 * @param unit mm of the field for one mm on paper
 */
public record JigPicture(Box box, double width, double height, double unit, List<Drawn> slots) {
    /** The room on paper, mm: the width of the page, and a height that leaves some of the table on the same page. */
    private static final double MOST_WIDTH = 184;

    private static final double MOST_HEIGHT = 100;
    /** More items than this fill a second page whatever the picture's height, so that it may as well be large. */
    private static final int ITEMS_OF_A_PAGE = 8;

    private static final double MOST_HEIGHT_OF_TWO_PAGES = 130;
    /** Small jigs are not blown up further than this. */
    private static final double MOST_SCALE = 2.5;

    private static final double BORDER = 2.5;

    /**
     * A slot.
     *
     * @param path the outline as SVG path data around the slot's centre
     * @param transform of the outline, as SVG writes it
     * @param labelTransform of the writing
     * @param state as a class name
     */
    public record Drawn(
            SlotView slot, String state, String path, String transform, String labelTransform, List<Text> lines) {}

    /** A line of writing; its baseline's middle at (x, y) with y down, mm. */
    public record Text(String kind, String text, double x, double y, double size) {}

    static JigPicture of(List<SlotView> slots) {
        Box jig = slots.stream().map(JigPicture::boundsOf).reduce(Box.EMPTY, Box::union);
        Box shown = jig.isEmpty() ? Box.centred(1, 1) : jig.grow(Math.max(jig.width(), jig.height()) * 0.02 + BORDER);
        double scale = Math.min(MOST_SCALE, Math.min(MOST_WIDTH / shown.width(), mostHeight(slots) / shown.height()));
        double unit = 1 / scale;
        List<Drawn> drawn = new ArrayList<>();
        slots.forEach(slot -> drawn.add(draw(slot, unit)));
        Box flipped = new Box(shown.minX(), -shown.maxY(), shown.maxX(), -shown.minY());
        return new JigPicture(flipped, shown.width() * scale, shown.height() * scale, unit, drawn);
    }

    private static double mostHeight(List<SlotView> slots) {
        long items = slots.stream().filter(SlotView::filled).count();
        return items > ITEMS_OF_A_PAGE ? MOST_HEIGHT_OF_TWO_PAGES : MOST_HEIGHT;
    }

    private static Box boundsOf(SlotView slot) {
        Affine pose = Affine.rotate(slot.rotation())
                .then(Affine.translate(slot.centre().x(), slot.centre().y()));
        return slot.pocket().transform(pose).bounds();
    }

    private static Drawn draw(SlotView slot, double unit) {
        Label label = Label.of(slot, unit);
        return new Drawn(
                slot,
                slot.state().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                PathData.of(slot.pocket()),
                pose(slot, slot.rotation()),
                pose(slot, label.angle()),
                label.lines().stream().map(JigPicture::written).toList());
    }

    /** SVG turns clockwise, so that an anticlockwise angle changes its sign. */
    private static String pose(SlotView slot, double angle) {
        Figures figures = new Figures();
        String move = "translate(" + figures.plain(slot.centre().x()) + " "
                + figures.plain(-slot.centre().y()) + ")";
        return angle == 0 ? move : move + " rotate(" + figures.plain(-angle) + ")";
    }

    /** A line's middle lies about a third of the font's size above its baseline. */
    private static Text written(Label.Line line) {
        return new Text(line.kind(), line.text(), line.x(), -line.y() + 0.36 * line.size(), line.size());
    }
}
