package dev.quoin.plate;

import java.util.Arrays;
import java.util.Optional;

/** The axis, through its centre, about which a jig is turned over as a whole. */
public enum FlipAxis {
    /** The horizontal one: what was up comes down. */
    X,
    /** The vertical one: what was left comes right. */
    Y;

    /** The axis of this name; none for any other text. */
    public static Optional<FlipAxis> named(String word) {
        return Arrays.stream(values()).filter(axis -> axis.word().equals(word)).findFirst();
    }

    /** How files name it. */
    public String word() {
        return this == X ? "x" : "y";
    }
}
