/**
 * The way of the beam and the time it takes. {@link dev.quoin.toolpath.Tracer} turns the marks of an item into strokes: it
 * follows paths, or covers areas with the lines of a {@link dev.quoin.toolpath.Grid}, cut to a {@link
 * dev.quoin.toolpath.Hatch}; {@link dev.quoin.toolpath.Travel} puts {@link dev.quoin.toolpath.Piece pieces} into an order
 * with short jumps; {@link dev.quoin.toolpath.TimeModel} gives the {@link dev.quoin.toolpath.Tally} of it. Nothing here
 * keeps anything between calls, and the same input gives the same strokes.
 */
package dev.quoin.toolpath;
