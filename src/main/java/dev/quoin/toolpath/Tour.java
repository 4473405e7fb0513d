package dev.quoin.toolpath;

import java.util.Arrays;

/**
 * A round trip through pieces, each with two ends that it is entered and left by. Piece p has the ends 2p and 2p + 1; two
 * ends that a jump joins are mates. Everything is told in ends, so that it does not matter which way round the trip is
 * held. The start of the travel is a piece too: its first end lies at the start, its second at no place, 0 mm from
 * everywhere, so that the travel may end anywhere.
 */
final class Tour {
    private final double[] x;
    private final double[] y;
    /** The second end of the start; -1 if the trip comes back. */
    private final int nowhere;

    private final int size;
    private final int[] order;
    private final int[] position;
    /** Whether a piece is entered at its second end. */
    private final boolean[] backwards;

    /** The swaps made since {@link #mark}, four ends each. */
    private int[] log = new int[256];

    private int logged;

    private Tour(double[] x, double[] y, int nowhere) {
        this.x = x;
        this.y = y;
        this.size = x.length / 2;
        this.nowhere = nowhere;
        this.order = new int[size];
        this.position = new int[size];
        this.backwards = new boolean[size];
        for (int p = 0; p < size; p++) {
            order[p] = p;
            position[p] = p;
        }
    }

    /**
     * A travel through all pieces in the order of their numbers, each forwards. The start is the last of them.
     *
     * @param x of the ends, mm; that of the last counts for nothing
     * @param y of the ends, mm
     */
    static Tour open(double[] x, double[] y) {
        return new Tour(x, y, x.length - 1);
    }

    /** A trip through all pieces in the order of their numbers, each forwards, and back to the first. */
    static Tour closed(double[] x, double[] y) {
        return new Tour(x, y, -1);
    }

    int size() {
        return size;
    }

    double distance(int end, int other) {
        if (end == nowhere || other == nowhere) {
            return 0;
        }
        double dx = x[end] - x[other];
        double dy = y[end] - y[other];
        return Math.sqrt(dx * dx + dy * dy);
    }

    /** Whether the trip, as it is held, enters the piece at this end. */
    boolean isEntry(int end) {
        return ((end & 1) == 1) == backwards[end >> 1];
    }

    /** The end that a jump joins to this one. */
    int mate(int end) {
        int at = position[end >> 1];
        if (isEntry(end)) {
            return exit(order[at == 0 ? size - 1 : at - 1]);
        }
        return entry(order[at + 1 == size ? 0 : at + 1]);
    }

    /** The piece so many places after another, as the trip is held. */
    int after(int piece, int steps) {
        return order[Math.floorMod(position[piece] + steps, size)];
    }

    int entry(int piece) {
        return 2 * piece + (backwards[piece] ? 1 : 0);
    }

    int exit(int piece) {
        return entry(piece) ^ 1;
    }

    /** The length of all jumps, mm. */
    double length() {
        double sum = 0;
        for (int p = 0; p < size; p++) {
            sum += distance(exit(p), mate(exit(p)));
        }
        return sum;
    }

    /** Forgets what was done so far: {@link #undo} comes back to here. */
    void mark() {
        logged = 0;
    }

    /** The number of swaps since the mark. */
    int swaps() {
        return logged / 4;
    }

    /** One of the four ends of a swap since the mark. */
    int swapped(int swap, int which) {
        return log[4 * swap + which];
    }

    /** Undoes swaps until only so many are left since the mark. */
    void undo(int left) {
        while (logged > 4 * left) {
            logged -= 4;
            turn(log[logged], log[logged + 2], log[logged + 1], log[logged + 3]);
        }
    }

    /**
     * Replaces the jumps a-b and c-d by a-c and b-d. The ends a and c are both entries, or both exits.
     *
     * @return how much shorter this is, mm
     */
    double swap(int a, int b, int c, int d) {
        if (logged == log.length) {
            log = Arrays.copyOf(log, 2 * logged);
        }
        log[logged++] = a;
        log[logged++] = b;
        log[logged++] = c;
        log[logged++] = d;
        turn(a, b, c, d);
        return distance(a, b) + distance(c, d) - distance(a, c) - distance(b, d);
    }

    private void turn(int a, int b, int c, int d) {
        if (isEntry(a)) {
            reverse(position[c >> 1], position[b >> 1]);
        } else {
            reverse(position[b >> 1], position[c >> 1]);
        }
    }

    /** Turns round what lies from one position on to another, or, which is the same trip, all the rest if that is less. */
    private void reverse(int from, int to) {
        int count = Math.floorMod(to - from, size) + 1;
        int i = from;
        int j = to;
        if (2 * count > size) {
            i = to + 1 == size ? 0 : to + 1;
            j = from == 0 ? size - 1 : from - 1;
            count = size - count;
        }
        for (int left = count; left > 0; left -= 2) {
            int first = order[i];
            put(i, order[j]);
            if (left > 1) {
                put(j, first);
            }
            i = i + 1 == size ? 0 : i + 1;
            j = j == 0 ? size - 1 : j - 1;
        }
    }

    private void put(int at, int piece) {
        order[at] = piece;
        position[piece] = at;
        backwards[piece] = !backwards[piece];
    }

    /** The ends at which the pieces are entered, in the order of travel from the start, which is left out. */
    int[] travel() {
        int start = size - 1;
        int[] entries = new int[size - 1];
        int end = 2 * start;
        for (int i = 0; i < entries.length; i++) {
            entries[i] = mate(end);
            end = entries[i] ^ 1;
        }
        return entries;
    }
}
