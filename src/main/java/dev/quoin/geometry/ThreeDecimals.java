package dev.quoin.geometry;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/**
 * Numbers of three decimals from tables of digits: a plate with its hatch lines is little else. What it writes is what
 * {@link Decimals} says.
 */
final class ThreeDecimals {
    /** Numbers below this in size can be written. */
    static final double LIMIT = 999.9;

    private static final int THOUSAND = 1000;
    private static final VarHandle FOUR_BYTES =
            MethodHandles.byteArrayViewVarHandle(int[].class, ByteOrder.LITTLE_ENDIAN);

    /** The digits of 0 to 999, the first in the lowest byte; above the lower four bytes, their number. */
    private static final long[] WHOLES = new long[THOUSAND];
    /** A point and the digits after it, without trailing zeros, likewise; nothing at all for 0. */
    private static final long[] FRACTIONS = new long[THOUSAND];

    static {
        for (int i = 0; i < THOUSAND; i++) {
            long digits = '0' + i / 100 | '0' + i / 10 % 10 << 8 | '0' + i % 10 << 16;
            int leading = i >= 100 ? 0 : i >= 10 ? 1 : 2;
            int after = i == 0 ? 0 : i % 100 == 0 ? 2 : i % 10 == 0 ? 3 : 4;
            WHOLES[i] = digits >>> 8 * leading | 3L - leading << 32;
            FRACTIONS[i] = digits << 8 | '.' | (long) after << 32;
        }
    }

    private ThreeDecimals() {}

    /** Writes a number at a place; what stands behind it, up to {@link Decimals#MOST_BYTES}, may change. */
    static int put(byte[] bytes, int at, double value) {
        int scaled = (int) (Math.abs(value) * THOUSAND + 0.5);
        int end = at;
        if (value < 0 && scaled > 0) {
            bytes[end++] = '-';
        }
        int whole = scaled / THOUSAND;
        end = put(bytes, end, WHOLES[whole]);
        return put(bytes, end, FRACTIONS[scaled - whole * THOUSAND]);
    }

    private static int put(byte[] bytes, int at, long entry) {
        FOUR_BYTES.set(bytes, at, (int) entry);
        return at + (int) (entry >>> 32);
    }
}
