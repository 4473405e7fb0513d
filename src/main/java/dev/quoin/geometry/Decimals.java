package dev.quoin.geometry;

import java.nio.charset.StandardCharsets;

/**
 * The one formatter of numbers for files: a point, no grouping, no exponent, at most so many decimals, trailing zeros
 * left out, never {@code -0}. Halves round away from zero. The same on every locale.
 */
public final class Decimals {
    /** Coordinates in mm. */
    public static final int COORDINATE = 3;
    /** Times in s. */
    public static final int SECONDS = 4;
    /** No more bytes than this are written for one number. */
    public static final int MOST_BYTES = 24;

    private static final long[] POWERS = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000};
    private static final double LARGEST = 1e12;

    private Decimals() {}

    /** The number as text, with at most {@code places} decimals (0 to 6). */
    public static String text(double value, int places) {
        byte[] bytes = new byte[MOST_BYTES];
        return new String(bytes, 0, put(bytes, 0, value, places), StandardCharsets.US_ASCII);
    }

    /** The number rounded to so many significant digits (1 to 6), as far as six decimals and whole numbers allow. */
    public static String significant(double value, int digits) {
        int before = value == 0 ? 1 : (int) Math.floor(Math.log10(Math.abs(value))) + 1;
        return text(value, Math.max(0, Math.min(6, digits - before)));
    }

    /** A coordinate, mm. */
    public static String mm(double value) {
        return text(value, COORDINATE);
    }

    /** A time, s. */
    public static String seconds(double value) {
        return text(value, SECONDS);
    }

    /**
     * Writes an ASCII character and a coordinate, mm, into {@code bytes} from {@code at}, where 1 more than
     * {@link #MOST_BYTES} must be free. Quick, since files are made of them.
     *
     * @return the position after the last byte written
     * @throws IllegalArgumentException if it is not finite, or larger than 1e12 in size
     */
    public static int coordinate(byte[] bytes, int at, char before, double mm) {
        if (mm >= 0 && mm < ThreeDecimals.LIMIT) {
            return ThreeDecimals.put(bytes, at, before, mm);
        }
        bytes[at] = (byte) before;
        return put(bytes, at + 1, mm, COORDINATE);
    }

    private static int put(byte[] bytes, int at, double value, int places) {
        if (!(Math.abs(value) <= LARGEST)) {
            throw new IllegalArgumentException("not a number for a file: " + value);
        }
        long power = POWERS[places];
        long scaled = (long) (Math.abs(value) * power + 0.5);
        int end = at;
        if (value < 0 && scaled > 0) {
            bytes[end++] = '-';
        }
        end = putWhole(bytes, end, scaled / power);
        return putFraction(bytes, end, scaled % power, places);
    }

    private static int putWhole(byte[] bytes, int at, long whole) {
        int digits = 1;
        for (long rest = whole / 10; rest > 0; rest /= 10) {
            digits++;
        }
        long rest = whole;
        for (int i = at + digits - 1; i >= at; i--) {
            bytes[i] = (byte) ('0' + rest % 10);
            rest /= 10;
        }
        return at + digits;
    }

    private static int putFraction(byte[] bytes, int at, long fraction, int places) {
        if (fraction == 0) {
            return at;
        }
        long rest = fraction;
        int digits = places;
        while (rest % 10 == 0) {
            rest /= 10;
            digits--;
        }
        bytes[at] = '.';
        for (int i = at + digits; i > at; i--) {
            bytes[i] = (byte) ('0' + rest % 10);
            rest /= 10;
        }
        return at + digits + 1;
    }
}
