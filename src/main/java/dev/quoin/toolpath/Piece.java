package dev.quoin.toolpath;

/**
 * What is marked in one go, between two jumps of the order of travel. It can be gone through in one or several ways, and
 * each way forwards or backwards.
 */
sealed interface Piece permits Outline, Region {
    /** The number of ways, at least 1. */
    int ways();

    double startX(int way);

    double startY(int way);

    double endX(int way);

    double endY(int way);

    /** Adds its strokes. */
    void stroke(int way, boolean backwards, Strokes.Builder strokes);
}
