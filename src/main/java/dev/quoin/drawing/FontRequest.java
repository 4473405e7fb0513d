package dev.quoin.drawing;

import java.util.List;

/**
 * The font that a drawing asks for.
 *
 * @param families the names in order of preference, CSS's generic names included; at least one
 * @param weight CSS's weight, 100 to 900
 * @param italic whether {@code italic} or {@code oblique} is asked for
 */
public record FontRequest(List<String> families, int weight, boolean italic) {}
