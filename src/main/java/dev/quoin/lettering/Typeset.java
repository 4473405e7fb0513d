package dev.quoin.lettering;

/** What comes of setting a text: the text in its font, or the characters that the fonts lack. */
public sealed interface Typeset permits TypesetText, MissingCharacters {}
