package dev.quoin.lettering;

import dev.quoin.lettering.OutlineTypeface.Drawn;

/**
 * What setting plain text asks of a font. Characters go by their index in {@link PlainLatin}. Safe for use by several
 * threads.
 */
interface PlainFont {
    /** How far apart characters are said to stand that are not plain together. */
    float NOT_PLAIN = Float.POSITIVE_INFINITY;

    /** The size of a unit of the distances, ems. */
    double unit();

    /** Whether a character is ever plain in this font. */
    boolean has(int index);

    /** How a character looks that the font {@link #has}. */
    Drawn drawn(int index);

    /** From a character to the next; infinite if the two are not plain together. */
    float between(int first, int second, PlainScript script);

    /** From a character to where the text ends; infinite if it is not plain. */
    float after(int last, PlainScript script);
}
