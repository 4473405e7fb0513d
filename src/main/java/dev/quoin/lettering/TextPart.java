package dev.quoin.lettering;

/**
 * Characters of a line that are set in one font and one direction.
 *
 * @param start index of the first, in the line's text
 * @param end index after the last
 * @param level the embedding level of UAX #9; odd runs from right to left
 */
record TextPart(int start, int end, byte level, Typeface typeface) {
    boolean isRightToLeft() {
        return level % 2 == 1;
    }

    /** Whether the next part can be set together with this one. */
    boolean continues(TextPart next) {
        return next.start == end && next.level == level && next.typeface == typeface;
    }

    TextPart upTo(int newEnd) {
        return new TextPart(start, newEnd, level, typeface);
    }
}
