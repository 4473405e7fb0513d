package dev.quoin.drawing;

import dev.quoin.geometry.Affine;
import java.util.List;

/**
 * A text, not yet set in type.
 *
 * @param element the element it comes from
 * @param lines its lines, in order; at least one
 * @param toItem the move from the text's user units (y down) into item coordinates (y up)
 * @param strokeWidth the width of its stroke in user units; 0 where it has none
 * @param filled whether its letters are painted
 */
public record DrawnText(Element element, List<TextLine> lines, Affine toItem, double strokeWidth, boolean filled)
        implements Drawn {
    public boolean painted() {
        return filled || strokeWidth > 0;
    }
}
