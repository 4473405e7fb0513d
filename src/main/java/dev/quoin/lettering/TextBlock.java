package dev.quoin.lettering;

import dev.quoin.drawing.TextAnchor;
import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;
import java.util.List;

/**
 * Lines of text, one under the other, at a font size of 1. The origin lies on the first baseline, where the lines are
 * flush: at the left end, the middle or the right end of each line's ink.
 *
 * @param texts what each line says
 * @param lines the same, set in type
 */
record TextBlock(List<String> texts, List<TypesetText> lines) {
    /** From one baseline to the next, ems. Common practice: 1.2. */
    static final double LEADING = 1.2;

    /** The moves that bring each line to its place in the block, its width times {@code squeeze}. */
    Affine place(int line, TextAnchor anchor, double squeeze) {
        Box ink = lines.get(line).ink();
        double flush =
                switch (anchor) {
                    case START -> ink.minX();
                    case MIDDLE -> (ink.minX() + ink.maxX()) / 2;
                    case END -> ink.maxX();
                };
        double x = ink.isEmpty() ? 0 : -flush * squeeze;
        return new Affine(squeeze, 0, 0, 1, x, -line * LEADING);
    }

    /** The letters in the block, moved once more. */
    Path outline(TextAnchor anchor, double squeeze, Affine move) {
        if (lines.size() == 1) {
            return lines.get(0).outline().transform(place(0, anchor, squeeze), move);
        }
        Path.Builder path = Path.builder();
        for (int i = 0; i < lines.size(); i++) {
            path.append(lines.get(i).outline().transform(place(i, anchor, squeeze), move));
        }
        return path.build();
    }

    /** The box around the ink. */
    Box ink(TextAnchor anchor, double squeeze) {
        Box box = Box.EMPTY;
        for (int i = 0; i < lines.size(); i++) {
            box = box.union(place(i, anchor, squeeze).apply(lines.get(i).ink()));
        }
        return box;
    }

    /** The last line's baseline, ems. */
    double lastBaseline() {
        return -(lines.size() - 1) * LEADING;
    }

    double capHeight() {
        return lines.get(0).capHeight();
    }

    boolean isBlank() {
        return lines.stream().allMatch(line -> line.ink().isEmpty());
    }
}
