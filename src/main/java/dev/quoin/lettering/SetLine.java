package dev.quoin.lettering;

/** What comes of setting a line glyph by glyph: the glyphs, or the characters that the fonts lack. */
public sealed interface SetLine permits GlyphLine, MissingCharacters {}
