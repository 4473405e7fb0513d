package dev.quoin.drawing;

/** SVG's {@code text-anchor}: which end of a line of text stands at its position. */
public enum TextAnchor {
    START,
    MIDDLE,
    END
}
