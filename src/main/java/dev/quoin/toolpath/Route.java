package dev.quoin.toolpath;

import dev.quoin.geometry.Point;
import java.util.List;

/** In which order pieces are marked, and which way each. Held in arrays, changed in place while it is being improved. */
final class Route {
    private final List<Piece> pieces;
    /** The pieces in the order of travel. */
    private final int[] order;
    /** For each piece, not each place in the order. */
    private final int[] ways;

    private final boolean[] backwards;

    private Route(List<Piece> pieces, int[] order, int[] ways, boolean[] backwards) {
        this.pieces = pieces;
        this.order = order;
        this.ways = ways;
        this.backwards = backwards;
    }

    /** From each piece to the one whose start, or end, or point where it may start, is nearest. */
    static Route greedy(List<Piece> pieces, Point start) {
        Entries entries = new Entries(pieces);
        int n = pieces.size();
        Route route = new Route(pieces, new int[n], new int[n], new boolean[n]);
        double x = start.x();
        double y = start.y();
        for (int i = 0; i < n; i++) {
            int entry = entries.takeNearest(x, y);
            int piece = entries.piece(entry);
            route.order[i] = piece;
            route.ways[piece] = entries.way(entry);
            route.backwards[piece] = entries.isEnd(entry);
            x = route.exitX(piece);
            y = route.exitY(piece);
        }
        return route;
    }

    /** A better order of the same pieces, each gone through in its present way, forwards or backwards. */
    Route reordered(Point start, int kicks) {
        int n = order.length;
        double[] x = new double[2 * n + 2];
        double[] y = new double[2 * n + 2];
        for (int i = 0; i < n; i++) {
            x[2 * i] = entryX(order[i]);
            y[2 * i] = entryY(order[i]);
            x[2 * i + 1] = exitX(order[i]);
            y[2 * i + 1] = exitY(order[i]);
        }
        x[2 * n] = start.x();
        y[2 * n] = start.y();
        int[] entries = n <= ShortestTravel.MOST_PIECES ? ShortestTravel.through(x, y, n) : searched(x, y, kicks);
        int[] newOrder = new int[n];
        boolean[] newBackwards = backwards.clone();
        for (int i = 0; i < n; i++) {
            newOrder[i] = order[entries[i] >> 1];
            newBackwards[newOrder[i]] ^= (entries[i] & 1) == 1;
        }
        return new Route(pieces, newOrder, ways.clone(), newBackwards);
    }

    private static int[] searched(double[] x, double[] y, int kicks) {
        Tour tour = Tour.open(x, y);
        new TourSearch(tour, Neighbours.of(x, y, x.length - 1)).run(kicks);
        return tour.travel();
    }

    /**
     * Lets each piece, its neighbours staying as they are, take the way that makes the jumps before and after it shortest,
     * until no way changes.
     *
     * @return whether any changed
     */
    boolean chooseWays(Point start) {
        boolean any = false;
        for (int round = 0; round < 20; round++) {
            boolean changed = false;
            double x = start.x();
            double y = start.y();
            for (int i = 0; i < order.length; i++) {
                changed |= chooseWay(i, x, y);
                x = exitX(order[i]);
                y = exitY(order[i]);
            }
            any |= changed;
            if (!changed) {
                break;
            }
        }
        return any;
    }

    private boolean chooseWay(int at, double fromX, double fromY) {
        int number = order[at];
        Piece piece = pieces.get(number);
        Gap gap = gap(at, fromX, fromY);
        double least = gap.jumps(entryX(number), entryY(number), exitX(number), exitY(number)) - 1e-9;
        boolean changed = false;
        for (int way = 0; way < piece.ways(); way++) {
            double startX = piece.startX(way);
            double startY = piece.startY(way);
            double endX = piece.endX(way);
            double endY = piece.endY(way);
            double there = gap.jumps(startX, startY, endX, endY);
            double back = startX == endX && startY == endY ? there : gap.jumps(endX, endY, startX, startY);
            if (Math.min(there, back) < least) {
                least = Math.min(there, back);
                ways[number] = way;
                backwards[number] = back < there;
                changed = true;
            }
        }
        return changed;
    }

    private Gap gap(int at, double fromX, double fromY) {
        boolean last = at + 1 == order.length;
        return last
                ? new Gap(fromX, fromY, 0, 0, true)
                : new Gap(fromX, fromY, entryX(order[at + 1]), entryY(order[at + 1]), false);
    }

    /** What a piece stands in: the end of the one before it and the entry of the one after it, if there is one. */
    private record Gap(double fromX, double fromY, double toX, double toY, boolean last) {
        double jumps(double entryX, double entryY, double exitX, double exitY) {
            double before = distance(fromX, fromY, entryX, entryY);
            return last ? before : before + distance(exitX, exitY, toX, toY);
        }
    }

    /** The jumps between the pieces, and the one from the start to the first; mm. */
    double length(Point start) {
        double sum = 0;
        double x = start.x();
        double y = start.y();
        for (int piece : order) {
            sum += distance(x, y, entryX(piece), entryY(piece));
            x = exitX(piece);
            y = exitY(piece);
        }
        return sum;
    }

    /** Where the last piece ends. */
    Point end() {
        int last = order[order.length - 1];
        return new Point(exitX(last), exitY(last));
    }

    /** The pieces in the order of travel. */
    int[] order() {
        return order.clone();
    }

    void stroke(Strokes.Builder strokes) {
        for (int piece : order) {
            pieces.get(piece).stroke(ways[piece], backwards[piece], strokes);
        }
    }

    private double entryX(int piece) {
        Piece p = pieces.get(piece);
        return backwards[piece] ? p.endX(ways[piece]) : p.startX(ways[piece]);
    }

    private double entryY(int piece) {
        Piece p = pieces.get(piece);
        return backwards[piece] ? p.endY(ways[piece]) : p.startY(ways[piece]);
    }

    private double exitX(int piece) {
        Piece p = pieces.get(piece);
        return backwards[piece] ? p.startX(ways[piece]) : p.endX(ways[piece]);
    }

    private double exitY(int piece) {
        Piece p = pieces.get(piece);
        return backwards[piece] ? p.startY(ways[piece]) : p.endY(ways[piece]);
    }

    private static double distance(double x0, double y0, double x1, double y1) {
        return Math.sqrt((x1 - x0) * (x1 - x0) + (y1 - y0) * (y1 - y0));
    }
}
