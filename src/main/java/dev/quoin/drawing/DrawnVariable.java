package dev.quoin.drawing;

/**
 * Stands in paint order for an element that can only be drawn once the values of its attributes are known.
 *
 * @param index its position in the list that {@code SvgDrawing.redraw} returns
 */
public record DrawnVariable(int index) implements Drawn {}
