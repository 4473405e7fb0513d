package dev.quoin.toolpath;

/**
 * What the beam does, in lengths, counts and times.
 *
 * @param markMm length of all strokes, mm
 * @param jumpMm length of all jumps, mm
 * @param strokes their number
 * @param jumps their number, those of no length not counted
 * @param turning at the corners of all strokes, degrees
 * @param marking along the strokes and at their corners, s
 * @param jumping along the jumps, s
 * @param settling before and after strokes and after jumps ({@code laser_on}, {@code laser_off}, {@code mark_settle},
 *     {@code jump_settle}), s
 */
public record Tally(
        double markMm,
        double jumpMm,
        long strokes,
        long jumps,
        double turning,
        double marking,
        double jumping,
        double settling) {
    public static final Tally ZERO = new Tally(0, 0, 0, 0, 0, 0, 0, 0);

    public Tally plus(Tally other) {
        return new Tally(
                markMm + other.markMm,
                jumpMm + other.jumpMm,
                strokes + other.strokes,
                jumps + other.jumps,
                turning + other.turning,
                marking + other.marking,
                jumping + other.jumping,
                settling + other.settling);
    }

    /** All of it, s. */
    public double seconds() {
        return marking + jumping + settling;
    }
}
