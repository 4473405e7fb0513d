package dev.quoin.drawing;

/** One thing that a drawing shows, in paint order. */
public sealed interface Drawn permits DrawnShape, DrawnText, DrawnVariable {}
