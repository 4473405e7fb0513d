package dev.quoin.toolpath;

import dev.quoin.geometry.Point;
import java.util.List;

/**
 * Orders the pieces of an item so that the jumps between them are short. The travel starts at the item's centre and may end
 * anywhere. First from each piece to the nearest, then the tour is searched for shortenings and each piece for a better
 * way, in turn.
 */
final class Travel {
    /** Kicks of the search: so many, and one more for every eight pieces. More find shorter tours, slowly. */
    private static final int KICKS = 10;

    private static final int MOST_KICKS = 2_000;
    private static final int MOST_ROUNDS = 5;

    /** All pieces, each once. */
    Strokes through(List<Piece> pieces) {
        return inTurn(List.of(pieces));
    }

    /** All pieces, each once, but what lies inside a closed outline before that outline. */
    Strokes insideOut(List<Piece> pieces) {
        return inTurn(Nesting.ranks(pieces));
    }

    private Strokes inTurn(List<List<Piece>> groups) {
        Strokes.Builder strokes = new Strokes.Builder();
        Point at = Point.ORIGIN;
        for (List<Piece> group : groups) {
            if (!group.isEmpty()) {
                Route route = route(group, at);
                route.stroke(strokes);
                at = route.end();
            }
        }
        return strokes.build();
    }

    /** A short way through pieces, at least one, from a start. */
    Route route(List<Piece> pieces, Point start) {
        Route best = Route.greedy(pieces, start);
        if (pieces.size() < 2) {
            return best;
        }
        for (int round = 0; round < MOST_ROUNDS; round++) {
            best = best.reordered(start, 0);
            if (!best.chooseWays(start)) {
                break;
            }
        }
        best = best.reordered(start, Math.min(MOST_KICKS, KICKS + pieces.size() / 8));
        best.chooseWays(start);
        return best;
    }
}
