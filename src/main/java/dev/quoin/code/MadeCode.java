package dev.quoin.code;

import dev.quoin.geometry.Area;

/**
 * A code as an area.
 *
 * @param area what is to be marked, mm, y up, the rectangle's centre at the origin. Neighbouring modules are merged into
 *     closed outlines, anticlockwise around what is marked and clockwise around holes, so that both fill rules agree
 * @param moduleMm the width of a module, or of the narrowest bar, mm
 * @param columns modules across, without quiet zones
 * @param rows modules down, without quiet zones; 1 for a linear code
 * @param encoded what a decoder reads: the content, its check digit included; GS1: the element string, its separators as
 *     U+001D, without the FNC1 at its start
 */
public record MadeCode(Area area, double moduleMm, int columns, int rows, String encoded) implements CodeResult {}
