package dev.quoin.plate;

import dev.quoin.toolpath.BeamPath;
import dev.quoin.toolpath.Tally;

/**
 * A part of an item's way in a step, from the item's centre.
 *
 * @param tally its strokes and the jumps inside it
 * @param saved by ordering its travel, against the order of the file, s
 */
record Traced(BeamPath path, Tally tally, double saved) {}
