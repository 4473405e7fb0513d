package dev.quoin.paper;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * What is written in a slot on the picture of a jig: along the pocket's longer side, never upside down, each line in a
 * size that fits, else shortened. The table beside the picture has every text in full.
 *
 * @param angle of the writing, degrees anticlockwise, in (-90, 90]
 */
record Label(double angle, List<Line> lines) {
    private static final double LEAST_NUMBER = 2.4;
    private static final double MOST_NUMBER = 8;
    private static final double LEAST_TEXT = 1.8;
    private static final double MOST_TEXT = 3.2;
    private static final int MOST_LINES = 3;
    /** The part of a pocket's height, and of its width, that is written on. */
    private static final double USED = 0.88;

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
        return new Label(angle, new Layout(turned, unit).lines(slot));
    }

    /** The same direction of writing, turned by half a turn where it would stand on its head. */
    private static double upright(double degrees) {
        double turn = ((degrees % 180) + 180) % 180;
        return turn > 90 ? turn - 180 : turn;
    }

    private static final class Layout {
        private final Room room;
        private final double unit;
        private final double height;
        private final Box bounds;
        private final List<Line> lines = new ArrayList<>();
        private double top;

        Layout(Path outline, double unit) {
            this.room = new Room(outline);
            this.unit = unit;
            this.bounds = outline.bounds();
            this.height = bounds.height() / unit;
        }

        List<Line> lines(SlotView slot) {
            double small = clamp(height * 0.17, LEAST_TEXT, MOST_TEXT);
            double large = clamp(height * 0.36, LEAST_NUMBER, MOST_NUMBER);
            String main =
                    slot.filled() ? Integer.toString(slot.item()) : slot.state().word();
            String kind = slot.filled() ? "number" : "word";
            double mainSize = slot.filled() ? large : small;
            if (small * 1.2 + mainSize > height * USED) {
                sideBySide(slot.id(), main, kind, Math.min(mainSize, height * USED));
                return lines;
            }
            double left = height * USED - small * 1.2 - mainSize;
            int count = Math.min(Math.min(slot.text().size(), MOST_LINES), (int) (left / (small * 1.2)));
            top = bounds.centre().y() + (small * 1.2 * (1 + count) + mainSize) / 2 * unit;
            add("id", slot.id(), small, 1.2 * small);
            add(kind, main, mainSize, mainSize);
            slot.text().subList(0, count).forEach(text -> add("text", text, small, 1.2 * small));
            return lines;
        }

        /** The next line down; {@code advance} is its share of the height, printed mm. */
        private void add(String kind, String text, double size, double advance) {
            double y = top - advance / 2 * unit;
            top -= advance * unit;
            double free = room.widthBetween(y - size * 0.45 * unit, y + size * 0.45 * unit) * USED / unit;
            place(kind, text, 0, y, size, free);
        }

        private void sideBySide(String id, String main, String kind, double size) {
            double y = bounds.centre().y();
            double free = room.widthBetween(y - size * 0.45 * unit, y + size * 0.45 * unit) * USED;
            place("id", id, -free / 4, y, Math.min(size, MOST_TEXT), free / 2 * 0.94 / unit);
            place(kind, main, free / 4, y, size, free / 2 * 0.94 / unit);
        }

        private void place(String kind, String text, double x, double y, double size, double free) {
            boolean bold = kind.equals("number") || kind.equals("id");
            double width = TextWidth.of(text) * (bold ? 1.12 : 1);
            double fitted = Math.min(size, free / Math.max(width, 1e-9));
            double chosen = kind.equals("number") ? fitted : Math.min(size, Math.max(fitted, LEAST_TEXT));
            String shown = kind.equals("number") ? text : TextWidth.shortened(text, free / chosen / (bold ? 1.12 : 1));
            if (!shown.isEmpty()) {
                lines.add(new Line(kind, shown, x, y, chosen * unit));
            }
        }

        private static double clamp(double value, double least, double most) {
            return Math.max(least, Math.min(most, value));
        }
    }
}
