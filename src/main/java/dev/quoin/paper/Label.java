package dev.quoin.paper;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import java.util.List;

/**
 * What is written in a slot on the picture of a jig: along the pocket's longer side, never upside down, each line in a
 * size that fits, else shortened. The table beside the picture has every text in full.
 *
 * @param angle of the writing, degrees anticlockwise, in (-90, 90]
 */
record Label(double angle, List<Line> lines) {
    /**
     * A line of it, its middle at (x, y) with y up, mm.
     *
     * @param kind {@code id}, {@code number}, {@code text} or {@code word}
     * @param size of the font, mm
     */
    record Line(String kind, String text, double x, double y, double size) {}

    /** The label of a slot on a picture on which {@code unit} mm of the field print as one mm. */
    static Label of(SlotView slot, double unit) {
        Box flat = slot.pocket().bounds();
        double along = slot.rotation() + (flat.width() >= flat.height() ? 0 : 90);
        double angle = upright(along);
        Path turned = slot.pocket().transform(Affine.rotate(slot.rotation() - angle));
        return new Label(angle, new LabelLayout(turned, unit).lines(slot));
    }

    /** The same direction of writing, turned by half a turn where it would stand on its head. */
    private static double upright(double degrees) {
        double turn = ((degrees % 180) + 180) % 180;
        return turn > 90 ? turn - 180 : turn;
    }
}
