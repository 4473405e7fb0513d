package dev.quoin.paper;

import dev.quoin.shop.Step;

/**
 * A step of a plate.
 *
 * @param seconds over all items of the plate, passes counted, s
 * @param colourName the name of the colour that stands for it in the plate's file
 * @param colourHex the same as {@code #rrggbb}
 */
public record StepView(Step step, double seconds, String colourName, String colourHex) {}
