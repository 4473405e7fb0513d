package dev.quoin.drawing;

/** What stands inside an element of the file. */
sealed interface SvgContent permits SvgElement, SvgText {}
