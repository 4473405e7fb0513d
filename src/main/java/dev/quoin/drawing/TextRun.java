package dev.quoin.drawing;

/**
 * Text in one font.
 *
 * @param font the font asked for
 * @param size the font size (the em) in user units
 * @param content what is to be set, white space collapsed as SVG 1.1 does by default (placeholders apart)
 */
public record TextRun(FontRequest font, double size, VariableText content) {}
