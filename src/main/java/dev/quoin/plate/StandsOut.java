package dev.quoin.plate;

import java.util.Optional;

/**
 * An item whose ink lies inside no usable pocket.
 *
 * @param side whose ink it is: 0 for the front, 1 for the back
 * @param least by how much it stands out of the pocket that it stands out of least; nothing where it lies in the box around one
 *     and yet leaves its shape
 */
public record StandsOut(int side, Optional<Overhang> least) {}
