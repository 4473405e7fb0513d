package dev.quoin.shop;

/** How the field is mirrored against the machine's body. */
public enum FieldMirror {
    NONE,
    /** Left and right change places. */
    X,
    /** Front and back change places. */
    Y
}
