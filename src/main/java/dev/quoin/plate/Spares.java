package dev.quoin.plate;

/**
 * Blanks to have at hand over and above the pieces ordered, where a share of the pieces fails and each that fails is made
 * again.
 */
public final class Spares {
    /** How likely it is that the spares do not last, at most. */
    public static final double RISK = 0.05;

    private Spares() {}

    /**
     * The least {@code s} with {@code P(F > s) <= RISK}, F being the failures among {@code pieces + s} tries, each failing
     * by itself with the same probability (binomial). That is the same as: so many failures come before the last good
     * piece in at least 95 cases of 100 (negative binomial), and so it is added up.
     *
     * @param failureRate from 0 up to but not including 1
     */
    public static int advised(int pieces, double failureRate) {
        if (!(failureRate >= 0 && failureRate < 1)) {
            throw new IllegalArgumentException("a failure rate of " + failureRate);
        }
        if (pieces == 0 || failureRate == 0) {
            return 0;
        }
        double logOfTerm = pieces * Math.log1p(-failureRate);
        double enough = Math.exp(logOfTerm);
        int spares = 0;
        while (enough < 1 - RISK) {
            spares++;
            logOfTerm += Math.log(failureRate) + Math.log((pieces + spares - 1.0) / spares);
            enough += Math.exp(logOfTerm);
        }
        return spares;
    }
}
