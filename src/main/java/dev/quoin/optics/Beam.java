package dev.quoin.optics;

import dev.quoin.shop.Machine;

/**
 * A laser beam before the lens. Widths are those of ISO 11146-1; for a beam near to Gaussian, where the intensity has
 * fallen to 1/e2. The aperture is taken to let the whole beam through: a truncated beam has a larger spot.
 *
 * @param wavelength mm
 * @param m2 beam propagation ratio, 1 for a perfect Gaussian beam
 * @param diameter at the lens, mm
 */
public record Beam(double wavelength, double m2, double diameter) {
    private static final double MM_PER_NM = 1e-6;

    public static Beam of(Machine machine) {
        return new Beam(machine.wavelengthNm() * MM_PER_NM, machine.m2(), machine.beamDiameterMm());
    }

    /**
     * The diameter of the spot in the focus of a lens, mm: {@code 4 M2 lambda f / (pi D)} (C. B. Roundy, Current Technology of
     * Beam Profile Measurements, 2000, equation 6b).
     */
    public double spot(double focalLength) {
        return 4 * m2 * wavelength * focalLength / (Math.PI * diameter);
    }

    /** How far from a focus of this diameter its area has doubled, mm: {@code pi d^2 / (4 M2 lambda)} (ISO 11146-1). */
    public double rayleighLength(double spot) {
        return Math.PI * spot * spot / (4 * m2 * wavelength);
    }

    /** The range of heights, half above and half below the focus, in which the spot's area is at most doubled; mm. */
    public double depthOfFocus(double spot) {
        return 2 * rayleighLength(spot);
    }
}
