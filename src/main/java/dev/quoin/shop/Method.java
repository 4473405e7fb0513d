package dev.quoin.shop;

/** How a step treats a mark. */
public enum Method {
    /** Covers the painted area with lines. */
    FILL,
    /** Follows the path. */
    FOLLOW
}
