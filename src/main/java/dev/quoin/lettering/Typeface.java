package dev.quoin.lettering;

/**
 * A font that can be asked for its letters. All lengths are in ems, y up. Its file is opened at the first question.
 * Safe for use by several threads.
 */
sealed interface Typeface permits OutlineTypeface, StrokeTypeface {
    /** Whether it can show the whole of a grapheme. */
    boolean covers(String grapheme);

    /** The height of its capitals, ems. */
    double capHeight();

    /** Whether its letters are open strokes, to be followed, rather than outlines to be filled. */
    boolean strokes();

    /**
     * Sets a run of one direction.
     *
     * @param text the whole line, so that letters join across runs
     * @return the glyphs from left to right
     */
    GlyphRun set(char[] text, int start, int end, boolean rightToLeft);
}
