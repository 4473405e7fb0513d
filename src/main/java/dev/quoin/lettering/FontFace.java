package dev.quoin.lettering;

import java.nio.file.Path;
import java.util.Optional;

/**
 * One font of a family: what is known of it before its file is opened.
 *
 * @param family the family's name, as CSS names it
 * @param weight CSS's weight, 1 to 1000
 * @param italic whether it is italic or oblique
 * @param typeface the font itself, opened when first asked for
 * @param file the user's file that it comes from; empty for bundled and installed fonts
 */
record FontFace(String family, int weight, boolean italic, Typeface typeface, Optional<Path> file) {}
