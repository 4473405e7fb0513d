package dev.quoin.geometry;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/**
 * Numbers of three decimals from tables, four bytes at a time: a plate with its hatch lines is little else. What it
 * writes is what {@link Decimals} says.
 */
final class ThreeDecimals {
    /** Numbers below this in size can be written. */
    static final double LIMIT = 999.9;

    private static final int THOUSAND = 1000;
    private static final VarHandle FOUR_BYTES =
            MethodHandles.byteArrayViewVarHandle(int[].class, ByteOrder.LITTLE_ENDIAN);
    /** The digits of 0 to 999, the first in the lowest byte; the highest byte holds their number. */
    private static final int[] WHOLES = new int[THOUSAND];
    /** The point and the digits after it, without trailing zeros. */
    private static final int[] FRACTIONS = new int[THOUSAND];

    private static final byte[] FRACTION_LENGTHS = new byte[THOUSAND];

    static {
        for (int i = 0; i < THOUSAND; i++) {
            String whole = Integer.toString(i);
            WHOLES[i] = packed(whole) | whole.length() << 24;
            String fraction = i == 0
                    ? ""
                    : "." + Integer.toString(THOUSAND + i).substring(1).replaceAll("0+$", "");
            FRACTIONS[i] = packed(fraction);
            FRACTION_LENGTHS[i] = (byte) fraction.length();
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
        int digits = WHOLES[whole];
        FOUR_BYTES.set(bytes, end, digits);
        end += digits >>> 24;
        int fraction = scaled - whole * THOUSAND;
        FOUR_BYTES.set(bytes, end, FRACTIONS[fraction]);
        return end + FRACTION_LENGTHS[fraction];
    }

    private static int packed(String ascii) {
        int packed = 0;
        for (int i = 0; i < ascii.length(); i++) {
            packed |= ascii.charAt(i) << 8 * i;
        }
        return packed;
    }
}
