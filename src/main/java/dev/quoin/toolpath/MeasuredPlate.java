package dev.quoin.toolpath;

import dev.quoin.shop.Machine;

/**
 * A plate whose time was taken by the clock.
 *
 * @param name for messages
 * @param marking along the strokes at their speeds, without corners, s
 * @param strokes their number
 * @param jumps their number
 * @param jumpMm their length, mm
 * @param halfTurns the turns at corners, in units of 180 degrees
 * @param items how many were loaded
 * @param plates 1, and 1 more for each time that the jig was turned over as a whole
 * @param shifts how often the jig was shifted, or a round piece turned, between parts
 * @param seconds measured: marking and loading
 */
public record MeasuredPlate(
        String name,
        double marking,
        double strokes,
        double jumps,
        double jumpMm,
        double halfTurns,
        double items,
        double plates,
        double shifts,
        double seconds) {
    /** A plate that was timed for a machine: what it holds does not depend on the machine's delays. */
    public static MeasuredPlate of(
            String name, Tally tally, Machine machine, int items, int plates, int shifts, double seconds) {
        double halfTurns = tally.turning() / 180;
        return new MeasuredPlate(
                name,
                tally.marking() - halfTurns * machine.corner(),
                tally.strokes(),
                tally.jumps(),
                tally.jumpMm(),
                halfTurns,
                items,
                plates,
                shifts,
                seconds);
    }
}
