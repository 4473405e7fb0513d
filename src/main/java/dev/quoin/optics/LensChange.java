package dev.quoin.optics;

import dev.quoin.shop.Lens;
import dev.quoin.shop.Machine;
import dev.quoin.shop.Step;

/**
 * What becomes of a step when it runs through another lens than the one on which it was proven.
 *
 * @param fluence the ratio of the fluences, new to proven: the spots' areas, turned over
 * @param powerPercent the power that restores the fluence; above 100 the laser does not have it
 * @param speed the speed that, at the power as it is, restores the dose along the line ({@code P / (v d)}), mm/s
 */
public record LensChange(double fluence, double powerPercent, double speed) {
    public static LensChange of(Machine machine, Lens proven, Lens used, Step step) {
        Beam beam = Beam.of(machine);
        double wider = beam.spot(used.focalLength()) / beam.spot(proven.focalLength());
        double fluence = 1 / (wider * wider);
        return new LensChange(fluence, step.powerPercent() / fluence, step.speed() / wider);
    }
}
