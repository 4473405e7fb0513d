package dev.quoin.geometry;

/** Which points a path surrounds (SVG 2, section 13.4.2, 'fill-rule'). */
public enum FillRule {
    NON_ZERO,
    EVEN_ODD
}
