package dev.quoin.lettering;

import dev.quoin.geometry.Path;
import java.util.List;

/**
 * A text in its space.
 *
 * @param outline its letters in the frame of the request, mm, y up; to be filled by the non-zero rule, or open strokes
 * @param capHeight the height of its capitals, mm
 * @param lines the text of each line, from the top
 * @param squeeze the factor of its letters' width; 1 where they are as designed
 * @param strokes whether the outline is open strokes, which can be followed but not filled
 */
public record Fitted(Path outline, double capHeight, List<String> lines, double squeeze, boolean strokes)
        implements FitResult {}
