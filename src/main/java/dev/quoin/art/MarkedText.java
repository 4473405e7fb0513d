package dev.quoin.art;

/**
 * A text as it was set.
 *
 * @param text what it says, line breaks as {@code \n}
 * @param capHeight mm
 * @param wrapped whether it was broken into more lines than the template has
 * @param squeeze the factor by which it was narrowed; 1 where it was not
 */
public record MarkedText(String text, double capHeight, boolean wrapped, double squeeze) {}
