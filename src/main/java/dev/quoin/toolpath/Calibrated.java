package dev.quoin.toolpath;

import java.util.Map;

/**
 * A machine's delays as the clock shows them.
 *
 * @param delays every one, s for each time it counts; those that are held are as they were
 * @param held why a delay was not fitted, for those that were not
 * @param before how far the plates were off with the machine as it was
 * @param after how far they are off now
 * @param leaveOneOut how far each is off if it is foretold from all the others
 */
public record Calibrated(
        Map<Delay, Double> delays, Map<Delay, String> held, Error before, Error after, Error leaveOneOut) {
    public Calibrated {
        delays = Map.copyOf(delays);
        held = Map.copyOf(held);
    }

    /**
     * How far foretold times are from measured ones.
     *
     * @param typical root mean square, as a share of the measured times
     * @param largest of any plate, as a share of its measured time
     */
    public record Error(double typical, double largest) {}

    /** The time of a plate, s. */
    public double seconds(MeasuredPlate plate) {
        double sum = plate.marking();
        for (Map.Entry<Delay, Double> delay : delays.entrySet()) {
            sum += delay.getKey().count(plate) * delay.getValue();
        }
        return sum;
    }
}
