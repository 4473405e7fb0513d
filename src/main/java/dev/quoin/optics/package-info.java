/** Spot, depth of focus, fluence and overlaps of a step on a lens, in closed form, and the warnings they give. */
package dev.quoin.optics;
