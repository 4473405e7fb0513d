package dev.quoin.toolpath;

/**
 * Movements with the laser off.
 *
 * @param mm their length
 * @param count their number; one of no length does not count
 */
record Jumps(double mm, long count) {
    /** What is shorter than a nanometre is the rounding of numbers, not a movement. */
    private static final double LEAST = 1e-6;

    /** One jump of this length, mm. */
    static Jumps of(double distance) {
        return distance < LEAST ? new Jumps(0, 0) : new Jumps(distance, 1);
    }

    /** The jumps between strokes. */
    static Jumps between(Strokes strokes) {
        double mm = 0;
        long count = 0;
        for (int i = 0; i + 1 < strokes.count(); i++) {
            double gap = strokes.gap(i);
            if (gap >= LEAST) {
                mm += gap;
                count++;
            }
        }
        return new Jumps(mm, count);
    }
}
