package dev.quoin.geometry;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/**
 * Numbers of three decimals from tables of digits: a plate with its hatch lines is little else. What it writes is what
 * {@link Decimals} says. A character, three digits, a point and three digits more are eight bytes, so all are put together
 * in one long and stored at once.
 */
final class ThreeDecimals {
    /** Numbers from 0 to below this can be written. */
    static final double LIMIT = 999.9;

    private static final int THOUSAND = 1000;
    private static final int HALF = 32;
    private static final long DIGITS = 0xFFFF_FFFFL;
    private static final VarHandle EIGHT_BYTES =
            MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

    /** In the lower half, the digits of 0 to 999 after a free byte, the first in the lowest; in the upper, how many bits that takes. */
    private static final long[] WHOLES = new long[THOUSAND];
    /** The same of a point and the digits after it, without trailing zeros; no free byte. */
    private static final long[] FRACTIONS = new long[THOUSAND];

    static {
        for (int i = 0; i < THOUSAND; i++) {
            long digits = '0' + i / 100 | '0' + i / 10 % 10 << 8 | '0' + i % 10 << 16;
            int leading = i >= 100 ? 0 : i >= 10 ? 1 : 2;
            int after = i == 0 ? 0 : i % 100 == 0 ? 2 : i % 10 == 0 ? 3 : 4;
            WHOLES[i] = digits >>> 8 * leading << 8 | 8L * (4 - leading) << HALF;
            FRACTIONS[i] = digits << 8 | '.' | 8L * after << HALF;
        }
    }

    private ThreeDecimals() {}

    /**
     * Writes an ASCII character and a number, not below zero, at a place; what stands behind it, up to
     * {@link Decimals#MOST_BYTES}, may change.
     */
    static int put(byte[] bytes, int at, char before, double value) {
        int scaled = (int) (value * THOUSAND + 0.5);
        // Divided by 1000 as long as it is below a million.
        int thousands = (int) (scaled * 274_877_907L >>> 38);
        long whole = WHOLES[thousands];
        long fraction = FRACTIONS[scaled - thousands * THOUSAND];
        int bits = (int) (whole >>> HALF);
        // How many bits the fraction takes is shifted out, or to behind the number.
        EIGHT_BYTES.set(bytes, at, (whole & DIGITS | before) + (fraction << bits));
        return at + (int) (whole + fraction >>> HALF + 3);
    }
}
