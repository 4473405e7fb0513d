package dev.quoin.art;

import dev.quoin.lettering.FontSet;

/**
 * Text in one font.
 *
 * @param size the font size (the em), mm
 */
record LineRun(FontSet fonts, double size, TextSource text) {}
