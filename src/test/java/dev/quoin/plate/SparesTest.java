package dev.quoin.plate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Spare blanks by their definition: the failures among all tries outnumber the spares in at most 5 cases of 100. */
class SparesTest {
    /** One piece: P(F > s) = p^(s+1), by hand. */
    @ParameterizedTest
    @CsvSource({"0.04, 0", "0.05, 0", "0.06, 1", "0.2, 1", "0.3, 2", "0.5, 4"})
    void onePieceNeedsSoMany(double rate, int spares) {
        assertEquals(spares, Spares.advised(1, rate));
    }

    @Test
    void nothingFailsNothingIsSpared() {
        assertEquals(0, Spares.advised(500, 0));
        assertEquals(0, Spares.advised(0, 0.1));
    }

    @Test
    void aLargeOrderNeedsItsMeanAndSomeDeviations() {
        // Mean n p / (1 - p) = 2040.8, deviation sqrt(n p) / (1 - p) = 45.6, normal quantile 1.645: about 2116.
        assertEquals(2116, Spares.advised(100_000, 0.02), 3);
    }

    @Test
    void aRateOfOneHasNoAnswer() {
        assertThrows(IllegalArgumentException.class, () -> Spares.advised(1, 1));
        assertThrows(IllegalArgumentException.class, () -> Spares.advised(1, Double.NaN));
    }

    @Property(tries = 200, seed = "2026")
    void theNumberIsTheLeastThatKeepsTheRisk(
            @ForAll @IntRange(min = 1, max = 60) int pieces, @ForAll @IntRange(min = 1, max = 60) int percent) {
        int spares = Spares.advised(pieces, percent / 100.0);
        assertTrue(risk(pieces, spares, percent) <= Spares.RISK + 1e-12);
        assertTrue(spares == 0 || risk(pieces, spares - 1, percent) > Spares.RISK - 1e-12);
    }

    /** P(F > s), F binomial of pieces + s tries, added up exactly from its terms. */
    private static double risk(int pieces, int spares, int percent) {
        int tries = pieces + spares;
        BigDecimal p = BigDecimal.valueOf(percent, 2);
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal ways = BigDecimal.ONE;
        for (int failures = 0; failures <= tries; failures++) {
            if (failures > spares) {
                sum = sum.add(ways.multiply(p.pow(failures))
                        .multiply(BigDecimal.ONE.subtract(p).pow(tries - failures)));
            }
            ways = ways.multiply(BigDecimal.valueOf(tries - failures))
                    .divide(BigDecimal.valueOf(failures + 1), MathContext.UNLIMITED);
        }
        return sum.doubleValue();
    }
}
