package dev.quoin.shop;

import dev.quoin.geometry.Decimals;

/** The numbers that a setting may take: from low (or above it, if open) to high. */
record Range(double low, boolean open, double high) {
    private static final double LARGEST = 1e9;

    /** Above 0. */
    static final Range POSITIVE = new Range(0, true, LARGEST);
    /** 0 or more. */
    static final Range NOT_NEGATIVE = new Range(0, false, LARGEST);
    /** Any number. */
    static final Range ANY = new Range(-LARGEST, false, LARGEST);
    /** A part of something, without nothing. */
    static final Range PERCENT = new Range(0, true, 100);
    /** A whole turn, either way. */
    static final Range DEGREES = new Range(-360, false, 360);

    static Range from(double low, double high) {
        return new Range(low, false, high);
    }

    boolean contains(double value) {
        return (open ? value > low : value >= low) && value <= high;
    }

    /** What to write: "a number above 0". */
    String describe() {
        String lowest = Decimals.text(low, 3);
        if (high == LARGEST) {
            return "a number "
                    + (low == -LARGEST ? "with a point" : open ? "above " + lowest : "of at least " + lowest);
        }
        return "a number " + (open ? "above " + lowest + ", up to " : "from " + lowest + " to ")
                + Decimals.text(high, 3);
    }
}
