package dev.quoin.art;

import dev.quoin.drawing.TextAnchor;
import java.util.List;

/** A line of a text, anchored at x, y in the text's frame, mm. */
record Line(double x, double y, TextAnchor anchor, List<LineRun> runs) {
    Line {
        runs = List.copyOf(runs);
    }
}
