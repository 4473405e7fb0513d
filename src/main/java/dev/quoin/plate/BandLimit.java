package dev.quoin.plate;

import dev.quoin.optics.Beam;
import dev.quoin.shop.Cylinder;
import dev.quoin.shop.Lens;
import dev.quoin.shop.Machine;

/**
 * How wide a strip of a round piece may be. With the focus on the top line, a strip of width w falls away at its edges by
 * the sag {@code r (1 - cos(w / 2r))}, which must not exceed the Rayleigh length: there the spot's area has doubled.
 */
public final class BandLimit {
    /** Further round the beam glances off: its energy spreads over 1.41 times the area there. */
    private static final double STEEPEST = Math.PI / 4;

    private BandLimit() {}

    /** The widest strip, mm around the piece at the drawing's middle. */
    public static double widest(Cylinder piece, Lens lens, Machine machine) {
        Beam beam = Beam.of(machine);
        double depth = beam.rayleighLength(beam.spot(lens.focalLength()));
        double r = piece.largestRadius();
        double byDepth = depth >= r ? STEEPEST : Math.acos(1 - depth / r);
        double byReach = Math.asin(Math.min(1, lens.reach().width() / 2 / r));
        return 2 * piece.radius() * Math.min(STEEPEST, Math.min(byDepth, byReach));
    }
}
