package dev.quoin.art;

import dev.quoin.problem.Place;

/**
 * The size of an item's text that others share.
 *
 * @param text where its element stands in the template
 * @param capHeight as it was set, mm
 */
public record SharedSize(SameSize with, Place text, double capHeight) {}
