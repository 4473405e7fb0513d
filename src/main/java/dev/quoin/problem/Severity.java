package dev.quoin.problem;

/** How much a {@link Problem} matters; the order is from worst to least. */
public enum Severity {
    /** The job cannot be prepared as it stands. */
    ERROR,
    /** The job can be prepared, but someone should look first. */
    WARNING,
    /** Something the user may want to know. */
    NOTE
}
