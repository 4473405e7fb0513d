package dev.quoin.plate;

/** The axis, through its centre, about which a jig is turned over as a whole. */
public enum FlipAxis {
    /** The horizontal one: what was up comes down. */
    X,
    /** The vertical one: what was left comes right. */
    Y;

    /** How files name it. */
    public String word() {
        return this == X ? "x" : "y";
    }
}
