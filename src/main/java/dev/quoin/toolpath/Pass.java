package dev.quoin.toolpath;

import java.util.Arrays;
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
    static Pass across(Hatch hatch) {
        Grid grid = hatch.grid();
        double[] xy = new double[4 * hatch.mostSpans()];
        int to = 0;
        boolean along = true;
        while (hatch.next()) {
            int line = hatch.line();
            int size = hatch.size();
            for (int i = 0; i < size; i++) {
                double u = hatch.u(along ? i : size - 1 - i);
                xy[to++] = grid.x(u, line);
                xy[to++] = grid.y(u, line);
            }
            along = along == (size == 0);
        }
        // Areas that overlap have fewer.
        Strokes lines = Strokes.ofLines(to == xy.length ? xy : Arrays.copyOf(xy, to));
        return new Pass(lines, lines);
    }
}
