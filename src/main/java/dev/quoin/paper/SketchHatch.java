package dev.quoin.paper;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Box;
import dev.quoin.geometry.Path;

/** The hatches of slots without an item, as {@code hatches.ftlh} has them; lengths in the picture's own mm. */
enum SketchHatch {
    EMPTY("empty", 2.4, 0.35, 45) {
        @Override
        void cell(Path.Builder lines, double x, double y) {
            line(lines, x, y, x, y + 2.4);
        }
    },
    UNUSABLE("unusable", 2.4, 0.6, 45) {
        @Override
        void cell(Path.Builder lines, double x, double y) {
            line(lines, x, y, x, y + 2.4);
            line(lines, x, y, x + 2.4, y);
        }
    },
    OUT_OF_REACH("out-of-reach", 2.2, 0.5, 0) {
        @Override
        void cell(Path.Builder lines, double x, double y) {
            line(lines, x, y + 0.6, x + 1.1, y + 0.6);
        }
    };

    private final String word;
    private final double step;
    private final double width;
    private final double turn;

    SketchHatch(String word, double step, double width, double turn) {
        this.word = word;
        this.step = step;
        this.width = width;
        this.turn = turn;
    }

    /** The hatch that a fill such as {@code url(#hatch-empty)} names. */
    static SketchHatch named(String fill) {
        for (SketchHatch hatch : values()) {
            if (fill.equals("url(#hatch-" + hatch.word + ")")) {
                return hatch;
            }
        }
        throw new IllegalArgumentException(fill);
    }

    double width() {
        return width;
    }

    /** Its lines, so many that they cover a box. */
    Path over(Box box) {
        double reach = Math.hypot(box.width(), box.height()) / 2 + step;
        Path.Builder lines = Path.builder();
        int cells = (int) Math.ceil(2 * reach / step);
        for (int i = 0; i < cells; i++) {
            for (int j = 0; j < cells; j++) {
                cell(lines, i * step - reach, j * step - reach);
            }
        }
        return lines.build()
                .transform(Affine.rotate(turn)
                        .then(Affine.translate(box.centre().x(), box.centre().y())));
    }

    abstract void cell(Path.Builder lines, double x, double y);

    private static void line(Path.Builder lines, double fromX, double fromY, double toX, double toY) {
        lines.moveTo(fromX, fromY).lineTo(toX, toY);
    }
}
