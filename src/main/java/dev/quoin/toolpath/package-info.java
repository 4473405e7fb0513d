/** The way of the beam: hatch, order of travel, strokes and jumps, and the time they take. */
package dev.quoin.toolpath;
