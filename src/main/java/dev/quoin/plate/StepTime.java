package dev.quoin.plate;

import dev.quoin.shop.Step;
import dev.quoin.toolpath.Tally;

/**
 * What a step takes over all items of a plate.
 *
 * @param saved by ordering the travel, against the order of the file, s
 */
public record StepTime(Step step, Tally tally, double saved) {}
