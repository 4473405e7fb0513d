package dev.quoin.drawing;

/** What comes of looking for a drawing that another one shows. */
public sealed interface ArtFile permits FoundArt, RefusedArt {}
