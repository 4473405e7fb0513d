package dev.quoin.shop;

/** Whether a filled area's edge is followed as well. */
public enum EdgePass {
    NONE,
    FIRST,
    LAST
}
