package dev.quoin.paper;

import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Lays the lines of a label into an outline: the slot's name, under it the item's number, under that the text, broken
 * between words into at most three lines. A pocket too low for that has name and number side by side.
 */
final class LabelLayout {
    /** Sizes of fonts on paper, mm; less than the least text cannot be read. */
    private static final double LEAST_NUMBER = 2.4;

    private static final double MOST_NUMBER = 8;
    private static final double LEAST_TEXT = 2;
    private static final double MOST_TEXT = 3.2;
    private static final int MOST_LINES = 3;
    /** The part of a pocket's height, and of its width, that is written on. */
    private static final double USED = 0.88;
    /** From line to line, in sizes of the font. */
    private static final double LEADING = 1.2;

    private static final double BOLD = 1.1;
    /** From one size to try to the next. */
    private static final double SMALLER = 0.93;

    private final Room room;
    private final Box bounds;
    private final double unit;
    private final double height;
    private final double small;
    private final List<Label.Line> lines = new ArrayList<>();

    /** @param unit mm of the field for one mm on paper */
    LabelLayout(Path outline, double unit) {
        this.room = new Room(outline);
        this.bounds = outline.bounds();
        this.unit = unit;
        this.height = bounds.height() / unit * USED;
        this.small = clamp(height * 0.17, LEAST_TEXT, MOST_TEXT);
    }

    List<Label.Line> lines(SlotView slot) {
        double main = slot.filled() ? clamp(height * 0.3, LEAST_NUMBER, MOST_NUMBER) : small;
        double left = height - LEADING * small - main;
        if (left < 0) {
            sideBySide(slot, Math.min(main, height));
            return lines;
        }
        int most = Math.min(MOST_LINES, (int) (left / (LEADING * small)));
        List<String> text = slot.text().isEmpty() ? List.of() : broken(slot.text(), main, most);
        double y = top(main, text.size());
        place("id", slot.id(), 0, y - LEADING * small / 2 * unit, small, 1);
        place(kind(slot), main(slot), 0, y - (LEADING * small + main / 2) * unit, main, 1);
        for (int i = 0; i < text.size(); i++) {
            place("text", text.get(i), 0, lineY(main, text.size(), i), small, 1);
        }
        return lines;
    }

    private static String kind(SlotView slot) {
        return slot.filled() ? "number" : "word";
    }

    private static String main(SlotView slot) {
        return slot.filled() ? Integer.toString(slot.item()) : slot.state().word();
    }

    private double top(double main, int count) {
        return bounds.centre().y() + (LEADING * small * (1 + count) + main) / 2 * unit;
    }

    private double lineY(double main, int count, int index) {
        return top(main, count) - (LEADING * small * (1.5 + index) + main) * unit;
    }

    /**
     * As many of the texts, from the first, as fit in full, each on lines of its own and in the largest size that will
     * do; where not even the first one fits, as much of it as there is room for.
     */
    private List<String> broken(List<String> text, double main, int most) {
        List<Words> words =
                text.stream().limit(Math.max(1, most)).map(Words::of).toList();
        for (int texts = Math.min(text.size(), most); texts > 0; texts--) {
            for (double size = small; size >= LEAST_TEXT; size *= SMALLER) {
                for (int count = texts; count <= most; count++) {
                    List<String> broken = broken(words.subList(0, texts), main, count, size);
                    if (fits(broken, main, count, size)) {
                        return broken;
                    }
                }
            }
        }
        return most == 0 ? List.of() : broken(words.subList(0, 1), main, most, LEAST_TEXT);
    }

    /** Whether the lines are exactly as many as were planned for, and none is too wide. */
    private boolean fits(List<String> text, double main, int count, double size) {
        boolean fits = text.size() == count;
        for (int i = 0; fits && i < count; i++) {
            fits = TextWidth.of(text.get(i)) <= most(main, count, i, size);
        }
        return fits;
    }

    /** How wide a line of the text may be, in sizes of the font. */
    private double most(double main, int count, int index, double size) {
        return free(lineY(main, count, index), size) / (size * unit);
    }

    /** Lines broken between words, and after each text; from the line number {@code count} on, all that is left. */
    private List<String> broken(List<Words> texts, double main, int count, double size) {
        List<String> broken = new ArrayList<>();
        for (Words text : texts) {
            int from = 0;
            for (int i = 1; i < text.count(); i++) {
                boolean last = broken.size() >= count - 1;
                if (!last && text.width(from, i + 1) > most(main, count, broken.size(), size)) {
                    broken.add(text.joined(from, i));
                    from = i;
                }
            }
            broken.add(text.joined(from, text.count()));
        }
        return broken;
    }

    private void sideBySide(SlotView slot, double size) {
        double y = bounds.centre().y();
        double quarter = free(y, size) / 4;
        place("id", slot.id(), -quarter, y, Math.min(size, MOST_TEXT), 0.46);
        place(kind(slot), main(slot), quarter, y, size, 0.46);
    }

    /** The width, mm, that is free for a line whose font has this size on paper. */
    private double free(double y, double size) {
        return room.widthBetween(y - size * 0.42 * unit, y + size * 0.42 * unit) * USED;
    }

    /** Numbers shrink until they fit; everything else is shortened once it would be too small to read. */
    private void place(String kind, String text, double x, double y, double size, double share) {
        boolean number = kind.equals("number");
        double weight = kind.equals("text") ? 1 : BOLD;
        double free = free(y, number ? size * 0.8 : LEAST_TEXT) * share / unit / weight;
        double fitted = Math.min(size, free / Math.max(TextWidth.of(text), 1e-9));
        double chosen = number ? fitted : Math.max(fitted, Math.min(size, LEAST_TEXT));
        String shown = number ? text : TextWidth.shortened(text, free / chosen * 1.001);
        if (!shown.isEmpty()) {
            lines.add(new Label.Line(kind, shown, x, y, chosen * unit));
        }
    }

    private static double clamp(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }
}
