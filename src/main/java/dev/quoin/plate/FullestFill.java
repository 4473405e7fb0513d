package dev.quoin.plate;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** Finds the pieces that fill a space best, trying them one by one; counts its steps, and limits those of one search. */
final class FullestFill {
    private static final int MOST_STEPS_A_SEARCH = 2_000;

    private long steps;
    private long lastStep;
    private List<Integer> pieces = List.of();
    /** The sum of the pieces from each one on. */
    private int[] from = new int[0];

    private final Deque<Integer> chosen = new ArrayDeque<>();
    private List<Integer> best = List.of();
    private int bestSum;

    /** All steps so far. */
    long steps() {
        return steps;
    }

    /** Sizes out of {@code pieces} whose sum comes as near to {@code space} as could be found, and not over it. */
    List<Integer> best(List<Integer> offered, int space) {
        pieces = offered;
        from = new int[offered.size() + 1];
        for (int i = offered.size() - 1; i >= 0; i--) {
            from[i] = from[i + 1] + offered.get(i);
        }
        lastStep = steps + MOST_STEPS_A_SEARCH;
        best = List.of();
        bestSum = 0;
        search(0, 0, space);
        return best;
    }

    private void search(int next, int sum, int space) {
        if (sum > bestSum) {
            bestSum = sum;
            best = new ArrayList<>(chosen);
        }
        for (int i = next; i < pieces.size(); i++) {
            if (bestSum == space || sum + from[i] <= bestSum || steps++ > lastStep) {
                return;
            }
            int size = pieces.get(i);
            if (sum + size <= space) {
                chosen.addLast(size);
                search(i + 1, sum + size, space);
                chosen.removeLast();
            }
        }
    }
}
