package dev.quoin.paper;

import dev.quoin.shop.Step;
import dev.quoin.toolpath.Tally;

/**
 * A step of a plate.
 *
 * @param tally over all items of the plate, passes counted
 * @param saved by ordering the travel, against the order of the file, s
 * @param colourName the name of the colour that stands for it in the plate's file
 * @param colourHex the same as {@code #rrggbb}
 */
public record StepView(Step step, Tally tally, double saved, String colourName, String colourHex) {}
