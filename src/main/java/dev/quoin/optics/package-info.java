/**
 * Spot, depth of focus, fluence and overlaps of a step on a lens, in closed form, and the warnings they give. The sources
 * of the formulas stand beside them; lengths are mm unless a name says otherwise.
 */
package dev.quoin.optics;
