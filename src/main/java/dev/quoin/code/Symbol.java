package dev.quoin.code;

/**
 * A code before it has a size.
 *
 * @param grid its modules, without quiet zones
 * @param quietLeft light modules that must stay to its left
 * @param quietRight to its right
 * @param quietAbove above and below; 0 for linear codes
 * @param encoded what a decoder reads
 */
record Symbol(ModuleGrid grid, int quietLeft, int quietRight, int quietAbove, String encoded) {
    /** A symbol with the same quiet zone on all sides. */
    static Symbol matrix(ModuleGrid grid, int quiet, String encoded) {
        return new Symbol(grid, quiet, quiet, quiet, encoded);
    }

    /** The modules and their quiet zones. */
    ModuleGrid withQuietZone() {
        return grid.padded(quietLeft, quietRight, quietAbove, quietAbove);
    }

    boolean isLinear() {
        return grid.rows() == 1;
    }

    /** The largest module, mm, at which the symbol and its quiet zone lie inside a rectangle. */
    double module(double widthMm, double heightMm) {
        double across = widthMm / (quietLeft + grid.columns() + quietRight);
        return isLinear() ? across : Math.min(across, heightMm / (grid.rows() + 2 * quietAbove));
    }
}
