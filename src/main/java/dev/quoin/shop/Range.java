package dev.quoin.shop;

import dev.quoin.geometry.Decimals;

/** The numbers that a setting may take: from low (or above it, if open) to high. */
enum Range {
    /** Above 0. */
    POSITIVE(0, true, 1e9),
    /** 0 or more. */
    NOT_NEGATIVE(0, false, 1e9),
    /** Any number. */
    ANY(-1e9, false, 1e9),
    /** A part of something, without nothing. */
    PERCENT(0, true, 100),
    /** A whole turn, either way. */
    DEGREES(-360, false, 360),
    /** 1 or more: M2 of a real beam. */
    FROM_ONE(1, false, 1e9),
    /** From ultraviolet to far infrared, nm. */
    WAVELENGTH(100, false, 20_000);

    private static final double LARGEST = 1e9;

    private final double low;
    private final boolean open;
    private final double high;

    Range(double low, boolean open, double high) {
        this.low = low;
        this.open = open;
        this.high = high;
    }

    boolean contains(double value) {
        return (open ? value > low : value >= low) && value <= high;
    }

    /** What to write: "a number above 0". */
    String describe() {
        String lowest = Decimals.text(low, 3);
        if (high == LARGEST) {
            return this == ANY ? "a number" : "a number " + (open ? "above " + lowest : "of at least " + lowest);
        }
        return "a number " + (open ? "above " + lowest + ", up to " : "from " + lowest + " to ")
                + Decimals.text(high, 3);
    }
}
