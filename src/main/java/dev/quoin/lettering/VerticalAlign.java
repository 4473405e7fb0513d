package dev.quoin.lettering;

import dev.quoin.geometry.Box;

/**
 * Where a fitted text stands in its space. Capitals and baselines decide, so that names with and without descenders
 * stand at one height; ink that would stand out moves the text by as much as it must.
 */
public enum VerticalAlign {
    /** The first line's capitals touch the top. */
    TOP {
        @Override
        double baseline(Box box, TextBlock block, double size) {
            return box.maxY() - block.capHeight() * size;
        }
    },
    /** As far from the first line's capitals to the top as from the last line's baseline to the bottom. */
    MIDDLE {
        @Override
        double baseline(Box box, TextBlock block, double size) {
            return box.centre().y() - (block.capHeight() + block.lastBaseline()) / 2 * size;
        }
    },
    /** The last line's baseline stands on the bottom. */
    BOTTOM {
        @Override
        double baseline(Box box, TextBlock block, double size) {
            return box.minY() - block.lastBaseline() * size;
        }
    };

    /** The y of the first baseline, before ink that stands out is looked at. */
    abstract double baseline(Box box, TextBlock block, double size);
}
