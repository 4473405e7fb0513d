package dev.quoin.code;

import dev.quoin.geometry.Path;
import java.util.BitSet;

/**
 * Dark and light modules in rows, the first row on top. Immutable; what is handed in must not be changed later.
 *
 * @param columns across, 1 or more
 * @param rows down, 1 or more
 * @param dark the dark ones, row by row
 */
record ModuleGrid(int columns, int rows, BitSet dark) {
    /** Says which modules are dark. */
    interface Dark {
        boolean at(int column, int row);
    }

    static ModuleGrid of(int columns, int rows, Dark modules) {
        BitSet dark = new BitSet(columns * rows);
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                dark.set(row * columns + column, modules.at(column, row));
            }
        }
        return new ModuleGrid(columns, rows, dark);
    }

    /** Whether a module is dark; those outside the grid are light. */
    boolean isDark(int column, int row) {
        return column >= 0 && column < columns && row >= 0 && row < rows && dark.get(row * columns + column);
    }

    /** The same with light modules around it. */
    ModuleGrid padded(int left, int right, int above, int below) {
        int wide = left + columns + right;
        BitSet moved = new BitSet();
        dark.stream()
                .map(i -> (i / columns + above) * wide + i % columns + left)
                .forEach(moved::set);
        return new ModuleGrid(wide, above + rows + below, moved);
    }

    /** Dark for light. */
    ModuleGrid inverted() {
        BitSet flipped = (BitSet) dark.clone();
        flipped.flip(0, columns * rows);
        return new ModuleGrid(columns, rows, flipped);
    }

    /**
     * The outlines of the dark modules, centred on the origin, y up. Modules that touch at a corner only are kept apart.
     *
     * @param width of a module, mm
     * @param height of a module, mm
     */
    Path outline(double width, double height) {
        return new OutlineTracer(this).trace(width, height);
    }
}
