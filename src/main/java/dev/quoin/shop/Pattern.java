package dev.quoin.shop;

/** How the lines of a filled area are ordered. */
public enum Pattern {
    /** Each line runs across the whole area, jumping the gaps. */
    LINES,
    /** Each connected stretch is finished before the next. */
    REGIONS
}
