package dev.quoin.geometry;

/**
 * Numbers of three decimals from tables of digits: a plate with its hatch lines is little else. What it writes is what
 * {@link Decimals} says. Plain stores, since the quick compiler makes nothing of wider ones.
 */
final class ThreeDecimals {
    /** Numbers below this in size can be written. */
    static final double LIMIT = 999.9;

    private static final int THOUSAND = 1000;
    /** The digits of 0 to 999, the first in the lowest byte; the highest byte holds their number. */
    private static final int[] WHOLES = new int[THOUSAND];
    /** The digits after the point, without trailing zeros, likewise. */
    private static final int[] FRACTIONS = new int[THOUSAND];

    static {
        for (int i = 0; i < THOUSAND; i++) {
            int digits = '0' + i / 100 | '0' + i / 10 % 10 << 8 | '0' + i % 10 << 16;
            int zeros = i >= 100 ? 0 : i >= 10 ? 1 : 2;
            WHOLES[i] = digits >>> 8 * zeros | 3 - zeros << 24;
            FRACTIONS[i] = digits | (i % 100 == 0 ? 1 : i % 10 == 0 ? 2 : 3) << 24;
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
        end = putDigits(bytes, end, WHOLES[whole]);
        int fraction = scaled - whole * THOUSAND;
        if (fraction == 0) {
            return end;
        }
        bytes[end] = '.';
        return putDigits(bytes, end + 1, FRACTIONS[fraction]);
    }

    private static int putDigits(byte[] bytes, int at, int digits) {
        bytes[at] = (byte) digits;
        bytes[at + 1] = (byte) (digits >> 8);
        bytes[at + 2] = (byte) (digits >> 16);
        return at + (digits >>> 24);
    }
}
