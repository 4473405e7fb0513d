package dev.quoin.toolpath;

import java.util.SplittableRandom;

/**
 * Shortens a tour. Each end is tried as the start of a chain of swaps, each of which joins an end to one of its near
 * neighbours, for as long as what has been gained so far stays above zero; the best of the chain is kept (S. Lin, B.
 * Kernighan, Operations Research 21, 1973; the first link alone is 2-opt). Then runs of up to three pieces are moved
 * elsewhere (I. Or, 1976). When neither helps, two neighbouring stretches change places and the search goes on from there;
 * what turned out longer is undone (iterated local search: O. Martin, S. Otto, E. Felten, 1991). The same input gives the
 * same tour: chance comes from a fixed seed, and the work is limited by count, not by the clock.
 */
final class TourSearch {
    private static final int DEEPEST = 8;
    private static final int BROADEST = 5;
    private static final int LONGEST_RUN = 3;
    private static final int LONGEST_KICK = 50;
    /** Less is the rounding of numbers, mm. */
    private static final double LEAST = 1e-9;

    private final Tour tour;
    private final int[][] near;
    private final int[] queue;
    private final boolean[] queued;
    private int head;
    private int waiting;

    /**
     * @param near for each end, the ends of other pieces near it, nearest first
     */
    TourSearch(Tour tour, int[][] near) {
        this.tour = tour;
        this.near = near;
        this.queue = new int[tour.size()];
        this.queued = new boolean[tour.size()];
    }

    /**
     * Searches until nothing helps, then kicks and searches again so many times. A tour of fewer than four pieces is left
     * alone by the kicks.
     */
    void run(int kicks) {
        for (int piece = 0; piece < tour.size(); piece++) {
            push(piece);
        }
        tour.mark();
        descend();
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < kicks && tour.size() >= 4; i++) {
            tour.mark();
            double gain = kick(random) + descend();
            if (gain < -LEAST) {
                tour.undo(0);
            }
        }
    }

    private double descend() {
        double gain = 0;
        while (waiting > 0) {
            int piece = pop();
            double more = improve(piece);
            while (more > 0) {
                gain += more;
                more = improve(piece);
            }
        }
        return gain;
    }

    private double improve(int piece) {
        for (int end = 2 * piece; end <= 2 * piece + 1; end++) {
            double gain = chain(end);
            if (gain > 0) {
                return gain;
            }
        }
        return moveRun(piece);
    }

    /** Tries chains of swaps that break the jump at an end; gives the gain of the first that shortens the tour, or 0. */
    private double chain(int base) {
        int mate = tour.mate(base);
        int[] candidates = near[mate];
        int tried = 0;
        for (int i = 0; i < candidates.length && tried < BROADEST; i++) {
            int other = candidates[i];
            if (tour.distance(mate, other) >= tour.distance(base, mate) - LEAST) {
                break;
            }
            if (fits(base, mate, other)) {
                tried++;
                double gain = follow(base, mate, other);
                if (gain > 0) {
                    return gain;
                }
            }
        }
        return 0;
    }

    private boolean fits(int base, int mate, int other) {
        return other != mate && other != base && tour.isEntry(other) == tour.isEntry(mate);
    }

    private double follow(int base, int firstMate, int firstOther) {
        int before = tour.swaps();
        int best = before;
        double bestGain = LEAST;
        double gain = 0;
        int mate = firstMate;
        int other = firstOther;
        for (int depth = 0; depth < DEEPEST && other >= 0; depth++) {
            int next = tour.mate(other);
            gain += tour.swap(base, mate, next, other);
            if (gain > bestGain) {
                bestGain = gain;
                best = tour.swaps();
            }
            mate = next;
            other = link(base, mate, gain + tour.distance(base, mate));
        }
        if (best > before) {
            touch(before);
        }
        tour.undo(best);
        return best > before ? bestGain : 0;
    }

    /** The neighbour that leaves most: what is open, less the new jump, and the jump that it breaks. Less than 0 if none. */
    private int link(int base, int mate, double open) {
        int found = -1;
        double most = 0;
        int tried = 0;
        for (int other : near[mate]) {
            double left = open - tour.distance(mate, other);
            if (left <= LEAST || tried == BROADEST) {
                break;
            }
            if (fits(base, mate, other)) {
                tried++;
                double value = left + tour.distance(other, tour.mate(other));
                if (value > most) {
                    most = value;
                    found = other;
                }
            }
        }
        return found;
    }

    /** Tries to move a run of pieces that begins at this one, either way along the tour; gives the gain, or 0. */
    private double moveRun(int piece) {
        for (int length = 1; length <= LONGEST_RUN && length + 2 < tour.size(); length++) {
            for (int way = -1; way <= 1; way += 2) {
                int other = tour.after(piece, way * (length - 1));
                int first = tour.entry(way > 0 ? piece : other);
                int last = tour.exit(way > 0 ? other : piece);
                double gain = moveRun(first, last, length);
                if (gain > 0) {
                    return gain;
                }
            }
        }
        return 0;
    }

    private double moveRun(int first, int last, int length) {
        int before = tour.mate(first);
        int after = tour.mate(last);
        double freed = tour.distance(before, first) + tour.distance(last, after) - tour.distance(before, after);
        for (int turned = 0; turned < 2; turned++) {
            int near1 = turned == 0 ? first : last;
            int far = turned == 0 ? last : first;
            for (int other : near[near1]) {
                double left = freed - tour.distance(near1, other);
                if (left <= LEAST) {
                    break;
                }
                int beyond = tour.mate(other);
                double gain = left - tour.distance(far, beyond) + tour.distance(other, beyond);
                if (gain > LEAST && other != before && other != after && !inRun(first, other, length)) {
                    int swapsBefore = tour.swaps();
                    move(first, last, other, beyond, near1);
                    touch(swapsBefore);
                    return gain;
                }
            }
        }
        return 0;
    }

    private boolean inRun(int first, int end, int length) {
        for (int i = 0; i < length; i++) {
            if (tour.after(first >> 1, i) == end >> 1) {
                return true;
            }
        }
        return false;
    }

    /** Moves the run between two ends into the jump between two others, {@code joined} next to {@code other}. */
    private double move(int first, int last, int other, int beyond, int joined) {
        int before = tour.mate(first);
        int after = tour.mate(last);
        boolean same = tour.isEntry(other) == tour.isEntry(before);
        int g = same ? other : beyond;
        int h = same ? beyond : other;
        double gain = tour.swap(before, first, g, h) + tour.swap(before, g, after, last);
        boolean done = (joined == last) == (g == other);
        return done ? gain : gain + tour.swap(g, last, first, h);
    }

    /** Lets two neighbouring stretches of the tour change places; gives what that shortens it, most often less than 0. */
    private double kick(SplittableRandom random) {
        int longest = Math.min(LONGEST_KICK, (tour.size() - 2) / 2);
        int piece = random.nextInt(tour.size());
        int one = 1 + random.nextInt(longest);
        int two = 1 + random.nextInt(longest);
        int first = tour.entry(piece);
        int last = tour.exit(tour.after(piece, one - 1));
        int other = tour.exit(tour.after(piece, one - 1 + two));
        int before = tour.swaps();
        double gain = move(first, last, other, tour.mate(other), first);
        touch(before);
        return gain;
    }

    /** Puts the pieces at the ends of all swaps since then back into the queue. */
    private void touch(int since) {
        for (int i = since; i < tour.swaps(); i++) {
            for (int k = 0; k < 4; k++) {
                push(tour.swapped(i, k) >> 1);
            }
        }
    }

    private void push(int piece) {
        if (!queued[piece]) {
            queued[piece] = true;
            queue[(head + waiting) % queue.length] = piece;
            waiting++;
        }
    }

    private int pop() {
        int piece = queue[head];
        head = head + 1 == queue.length ? 0 : head + 1;
        waiting--;
        queued[piece] = false;
        return piece;
    }
}
