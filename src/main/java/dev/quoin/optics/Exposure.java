package dev.quoin.optics;

import dev.quoin.geometry.Decimals;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Machine;
import dev.quoin.shop.Method;
import dev.quoin.shop.Step;
import java.util.OptionalDouble;

/**
 * What one pass of a step does to the surface through a lens, in focus. Closed forms; losses in the optics are not known
 * and not counted.
 *
 * @param spot diameter (1/e2), mm
 * @param depthOfFocus mm
 * @param power mean, W
 * @param pulseEnergy J
 * @param peakPower of a pulse, taken as its energy over its length, W
 * @param peakFluence in the middle of the spot, twice the mean; J/cm2
 * @param pulsePitch from one pulse to the next along a line, mm
 * @param pulseOverlap share of the spot that the next pulse covers again along the line; below 0 the pulses stand apart
 * @param lineEnergy along a line, J/mm
 * @param lineOverlap share of the spot that the next line covers again; below 0 the lines stand apart; only of a fill
 * @param dose J/mm2; only of a fill
 */
public record Exposure(
        double spot,
        double depthOfFocus,
        double power,
        double pulseEnergy,
        double peakPower,
        double peakFluence,
        double pulsePitch,
        double pulseOverlap,
        double lineEnergy,
        OptionalDouble lineOverlap,
        OptionalDouble dose) {
    private static final double MM2_PER_CM2 = 100;

    public static Exposure of(Machine machine, Lens lens, Step step) {
        Beam beam = Beam.of(machine);
        double spot = beam.spot(lens.focalLength());
        double power = machine.powerW() * step.powerPercent() / 100;
        double energy = power / (step.frequencyKhz() * 1e3);
        double pitch = step.speed() / (step.frequencyKhz() * 1e3);
        double along = power / step.speed();
        boolean fills = step.method() == Method.FILL;
        return new Exposure(
                spot,
                beam.depthOfFocus(spot),
                power,
                energy,
                energy / (step.pulseNs() * 1e-9),
                peakFluenceOf(energy, spot),
                pitch,
                1 - pitch / spot,
                along,
                fills ? OptionalDouble.of(1 - step.spacing() / spot) : OptionalDouble.empty(),
                fills ? OptionalDouble.of(along / step.spacing()) : OptionalDouble.empty());
    }

    /** All of it in one line, rounded. */
    public String describe() {
        return "spot " + Decimals.mm(spot) + " mm, depth of focus " + rounded(depthOfFocus) + " mm, pulse energy "
                + rounded(pulseEnergy * 1e3) + " mJ, peak power " + rounded(peakPower / 1e3) + " kW, peak fluence "
                + rounded(peakFluence) + " J/cm2, pulse overlap " + percent(pulseOverlap)
                + (lineOverlap.isPresent() ? ", line overlap " + percent(lineOverlap.getAsDouble()) : "")
                + (dose.isPresent() ? ", dose a pass " + rounded(dose.getAsDouble()) + " J/mm2" : "");
    }

    private static String rounded(double value) {
        return Decimals.significant(value, 3);
    }

    private static String percent(double share) {
        return Decimals.text(100 * share, 0) + " %";
    }

    /**
     * The fluence in the middle of a Gaussian spot, J/cm2: {@code 8 E / (pi d^2)}, twice the mean over its area (R. Paschotta,
     * RP Photonics Spotlight, 3 November 2025).
     *
     * @param energy of a pulse, J
     * @param spot diameter (1/e2), mm
     */
    public static double peakFluenceOf(double energy, double spot) {
        return 8 * energy / (Math.PI * spot * spot) * MM2_PER_CM2;
    }
}
