package dev.quoin.lettering;

/** What comes of fitting a text to its space. */
public sealed interface FitResult permits Fitted, TooLong, MissingCharacters {}
