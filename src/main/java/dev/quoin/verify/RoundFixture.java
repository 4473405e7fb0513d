package dev.quoin.verify;

import dev.quoin.plate.Band;
import dev.quoin.plate.Stand;
import dev.quoin.shop.Cylinder;

/**
 * What the strips of a round piece are held to.
 *
 * @param rayleighLength how far the surface may fall away from the focus, mm
 * @param halfReach how far the lens reaches from the field's centre, mm
 */
public record RoundFixture(Cylinder piece, double rayleighLength, double halfReach) {
    /** Numbers in tables have three decimals, mm and degrees. */
    private static final double ROUNDING = 0.001;

    /** Whether a strip's middle is on top, and its edges in focus and in reach. */
    boolean allows(Stand stand) {
        return stand.band().isPresent() && allows(stand.band().get());
    }

    private boolean allows(Band band) {
        double half = (band.to() - band.from()) / 2 / piece.radius();
        double sag = piece.largestRadius() * (1 - Math.cos(half));
        double turn = Math.toDegrees(band.middle() / piece.radius());
        return half > 0
                && sag <= rayleighLength + ROUNDING
                && piece.largestRadius() * Math.sin(half) <= halfReach + ROUNDING
                && Math.abs(turn - band.turn()) <= ROUNDING + Math.toDegrees(ROUNDING / piece.radius());
    }
}
