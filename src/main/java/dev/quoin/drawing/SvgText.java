package dev.quoin.drawing;

/** Characters inside an element, entities and CDATA resolved. */
record SvgText(String text) implements SvgContent {}
