package dev.quoin.lettering;

/**
 * A text that does not fit at its least height.
 *
 * @param capHeight the greatest cap height at which it would, broken and squeezed as far as allowed, mm; 0 where there
 *     is no room at all
 */
public record TooLong(double capHeight) implements FitResult {}
