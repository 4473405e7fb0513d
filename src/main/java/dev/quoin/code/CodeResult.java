package dev.quoin.code;

/** What comes of making a code: its area, or why there is none. */
public sealed interface CodeResult permits MadeCode, RefusedCode {}
