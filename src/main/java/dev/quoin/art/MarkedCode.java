package dev.quoin.art;

import dev.quoin.code.CodeKind;
import dev.quoin.geometry.Box;

/**
 * A code as it was drawn.
 *
 * @param encoded what a decoder reads
 * @param module the width of a module, or of the narrowest bar, mm
 * @param bounds of its marks, in item coordinates, mm
 */
public record MarkedCode(CodeKind kind, String encoded, double module, Box bounds) {}
