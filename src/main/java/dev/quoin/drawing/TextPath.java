package dev.quoin.drawing;

import dev.quoin.geometry.Path;

/**
 * The path that a text runs along.
 *
 * @param id of the element that draws it
 * @param path in the text's user units, y down
 * @param start how far along it the text is anchored, user units
 */
public record TextPath(String id, Path path, double start) {}
