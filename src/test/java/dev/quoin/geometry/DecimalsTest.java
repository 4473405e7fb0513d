package dev.quoin.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalsTest {
    @ParameterizedTest
    @CsvSource({
        "0, 3, 0",
        "-0.0, 3, 0",
        "-0.0004, 3, 0",
        "0.0005, 3, 0.001",
        "-0.0005, 3, -0.001",
        "1, 3, 1",
        "1.5, 3, 1.5",
        "12.340, 3, 12.34",
        "1000000, 3, 1000000",
        "-200.125, 3, -200.125",
        "0.12345678, 4, 0.1235",
        "99.9996, 3, 100",
        "7, 0, 7",
        "0.000001, 6, 0.000001",
    })
    void numbersHaveAPointNoGroupingAndNoTrailingZeros(double value, int places, String text) {
        assertEquals(text, Decimals.text(value, places));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, 1e13, -1e13})
    void whatIsNoNumberForAFileIsRefused(double value) {
        assertThrows(IllegalArgumentException.class, () -> Decimals.mm(value));
        assertThrows(IllegalArgumentException.class, () -> coordinate(' ', value));
    }

    @ParameterizedTest
    @ValueSource(
            doubles = {
                0, -0.0, 0.0004999, 0.0005, -0.0004, -0.0005, 0.1, 9.9995, 99.9995, 999.8994, 999.8999, 999.9, 1000,
                -3.5, 1e12
            })
    void aCoordinateIsWrittenAfterACharacter(double value) {
        assertEquals("L" + Decimals.text(value, 3), coordinate('L', value));
    }

    /** From tables of digits, or digit by digit: at and beside every half thousandth. */
    @Property(seed = "2026")
    void aCoordinateIsWrittenAsAnyOtherNumber(@ForAll @IntRange(max = 2_000_000) int halves) {
        double half = halves / 2000.0;
        for (double value : new double[] {half, Math.nextUp(half), Math.nextDown(half), -half}) {
            assertEquals(" " + Decimals.text(value, 3), coordinate(' ', value));
        }
    }

    private static String coordinate(char before, double value) {
        byte[] bytes = new byte[1 + Decimals.MOST_BYTES];
        return new String(bytes, 0, Decimals.coordinate(bytes, 0, before, value), StandardCharsets.US_ASCII);
    }

    /** Every thousandth around the place where the tables end, against the platform's own decimals. */
    @Test
    void everyThousandthIsWrittenAsThePlatformWritesIt() {
        for (int i = -1_100_000; i <= 1_100_000; i += 1) {
            String written = coordinate(' ', i / 1000.0);
            String platform =
                    i == 0 ? "0" : BigDecimal.valueOf(i, 3).stripTrailingZeros().toPlainString();
            assertEquals(" " + platform, written);
        }
    }

    /** The platform's decimal arithmetic rounds the same, but for the last bit of a half. */
    @Property(seed = "2026")
    void theTextIsTheNumberRounded(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) @Scale(8) double value, @ForAll @IntRange(max = 6) int places) {
        BigDecimal exact = new BigDecimal(value).setScale(places, RoundingMode.HALF_UP);
        BigDecimal written = new BigDecimal(Decimals.text(value, places));
        BigDecimal unit = BigDecimal.ONE.movePointLeft(places);
        BigDecimal difference = exact.subtract(written).abs();
        boolean half = new BigDecimal(value)
                        .subtract(written)
                        .abs()
                        .subtract(unit.divide(BigDecimal.valueOf(2)))
                        .abs()
                        .doubleValue()
                < 1e-9;
        assertEquals(
                true, difference.signum() == 0 || (half && difference.compareTo(unit) <= 0), exact + " / " + written);
    }
}
