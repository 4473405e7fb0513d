package dev.quoin.job;

import dev.quoin.plate.Part;
import dev.quoin.plate.Seat;

/**
 * Where an item lies in a part of a plate, and what it takes there.
 *
 * @param plate the plate's number
 * @param seconds its strokes, the jumps inside it and those into it, s
 */
record ItemTime(int plate, Part part, Seat seat, double seconds) {}
