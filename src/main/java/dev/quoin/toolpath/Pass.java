package dev.quoin.toolpath;

import java.util.List;

/**
 * One pass over an item.
 *
 * @param ordered its strokes in the order of travel
 * @param asDrawn the same in the order, and in the directions, of the file
 */
record Pass(Strokes ordered, Strokes asDrawn) {
    /** Pieces in the order of travel; inner outlines before outer ones if they are to be cut. */
    static Pass through(List<Piece> pieces, boolean cut) {
        Strokes.Builder drawn = new Strokes.Builder();
        pieces.forEach(piece -> piece.stroke(0, false, drawn));
        Travel travel = new Travel();
        return new Pass(cut ? travel.insideOut(pieces) : travel.through(pieces), drawn.build());
    }

    /** Each line of a hatch across the whole area, to and fro. */
    static Pass across(Spans spans) {
        Strokes.Builder strokes = new Strokes.Builder().reserve(spans.count());
        boolean along = true;
        for (int i = 0; i < spans.lines(); i++) {
            int from = spans.starts()[i];
            int to = spans.starts()[i + 1];
            for (int at = from; at < to; at += 2) {
                spans.stroke(spans.first() + i, along ? at : from + to - 2 - at, along, strokes);
            }
            along = along == (from == to);
        }
        Strokes lines = strokes.build();
        return new Pass(lines, lines);
    }
}
