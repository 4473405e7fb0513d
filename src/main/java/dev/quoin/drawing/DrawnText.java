package dev.quoin.drawing;

import dev.quoin.geometry.Affine;
import dev.quoin.geometry.Clip;
import java.util.List;
import java.util.Optional;

/**
 * A text, not yet set in type.
 *
 * @param element the element it comes from
 * @param lines its lines, in order; at least one; along a path it is one, and its x and y count for nothing
 * @param toItem the move from the text's user units (y down) into item coordinates (y up)
 * @param strokeWidth the width of its stroke in user units; 0 where it has none
 * @param filled whether its letters are painted
 * @param along the path that it runs along; empty where it stands on straight lines
 * @param clip the window through which it shows, in item coordinates; empty where it shows whole
 */
public record DrawnText(
        Element element,
        List<TextLine> lines,
        Affine toItem,
        double strokeWidth,
        boolean filled,
        Optional<TextPath> along,
        Optional<Clip> clip)
        implements Drawn {
    public boolean painted() {
        return filled || strokeWidth > 0;
    }
}
