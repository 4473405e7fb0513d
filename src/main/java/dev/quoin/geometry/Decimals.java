package dev.quoin.geometry;

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

    private static final int THOUSAND_GROUPS = 1_000;
    private static final byte[] GROUPS = groups();

    private Decimals() {}

    /** The number as text, with at most {@code places} decimals (0 to 6). */
    public static String text(double value, int places) {
        byte[] bytes = new byte[MOST_BYTES];
        return new String(bytes, 0, put(bytes, 0, value, places), java.nio.charset.StandardCharsets.US_ASCII);
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
     * Writes the number as ASCII into {@code bytes} from {@code at}, where {@link #MOST_BYTES} must be free.
     *
     * @return the position after the last byte written
     * @throws IllegalArgumentException if it is not finite, or larger than 1e12 in size
     */
    public static int put(byte[] bytes, int at, double value, int places) {
        if (!(Math.abs(value) <= LARGEST)) {
            throw new IllegalArgumentException("not a number for a file: " + value);
        }
        if (places == COORDINATE && Math.abs(value) < ThreeDecimals.LIMIT) {
            return ThreeDecimals.put(bytes, at, value);
        }
        long power = POWERS[places];
        long scaled = (long) (Math.abs(value) * power + 0.5);
        int end = at;
        if (value < 0 && scaled > 0) {
            bytes[end++] = '-';
        }
        if (places == COORDINATE && scaled < THOUSAND_GROUPS * 1_000L) {
            return putCoordinate(bytes, end, (int) scaled);
        }
        end = putWhole(bytes, end, scaled / power);
        return putFraction(bytes, end, scaled % power, places);
    }

    /** What nearly all numbers in files are: thousandths of a mm, less than 1000 mm. Same bytes, in a tenth of the time. */
    private static int putCoordinate(byte[] bytes, int at, int thousandths) {
        int whole = thousandths / 1_000;
        int fraction = thousandths - 1_000 * whole;
        int end = at;
        for (int i = 3 * whole + (whole < 10 ? 2 : whole < 100 ? 1 : 0); i < 3 * whole + 3; i++) {
            bytes[end++] = GROUPS[i];
        }
        if (fraction > 0) {
            bytes[end] = '.';
            bytes[end + 1] = GROUPS[3 * fraction];
            bytes[end + 2] = GROUPS[3 * fraction + 1];
            bytes[end + 3] = GROUPS[3 * fraction + 2];
            end += 4;
            while (bytes[end - 1] == '0') {
                end--;
            }
        }
        return end;
    }

    /** The digits of 000 to 999. */
    private static byte[] groups() {
        byte[] digits = new byte[3 * THOUSAND_GROUPS];
        for (int i = 0; i < THOUSAND_GROUPS; i++) {
            digits[3 * i] = (byte) ('0' + i / 100);
            digits[3 * i + 1] = (byte) ('0' + i / 10 % 10);
            digits[3 * i + 2] = (byte) ('0' + i % 10);
        }
        return digits;
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
