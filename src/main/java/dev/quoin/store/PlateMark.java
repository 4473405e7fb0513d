package dev.quoin.store;

import dev.quoin.geometry.FillRule;
import dev.quoin.geometry.Path;

/**
 * A path of a plate file.
 *
 * @param step the number of the step that it belongs to, from 1
 * @param path on the page, mm (y down)
 */
public record PlateMark(int step, Path path, FillRule rule) {}
