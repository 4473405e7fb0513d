package dev.quoin.plate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/**
 * Improves a packing: again and again some bins are emptied and their pieces laid anew, each bin as full as can be
 * around the largest piece that is left (the minimum bin slack of J. Gupta and J. Ho, 1999). What comes out is kept
 * unless the sum of the squared loads falls; with that sum the full bins grow fuller, until one is empty.
 */
final class Repacking {
    /** Fixed, so that the same order always gives the same plates. */
    private static final long SEED = 120;

    private static final int MOST_TRIES = 100_000;
    private static final long MOST_STEPS = 20_000_000;
    private static final int FEWEST_EMPTIED = 2;
    private static final int MOST_EMPTIED = 9;

    private final int capacity;
    private final int bound;
    private final Random random = new Random(SEED);
    private final FullestFill fill = new FullestFill();

    Repacking(int capacity, int bound) {
        this.capacity = capacity;
        this.bound = bound;
    }

    /** Bins of the same pieces, as many or fewer. */
    List<Bin> improve(List<Bin> packed) {
        List<Bin> bins = new ArrayList<>(packed);
        for (int tries = 0; tries < MOST_TRIES && fill.steps() < MOST_STEPS && bins.size() > bound; tries++) {
            int emptied = Math.min(bins.size(), FEWEST_EMPTIED + random.nextInt(MOST_EMPTIED - FEWEST_EMPTIED + 1));
            for (int i = 0; i < emptied; i++) {
                Collections.swap(bins, bins.size() - 1 - i, random.nextInt(bins.size() - i));
            }
            List<Bin> taken = bins.subList(bins.size() - emptied, bins.size());
            List<Bin> laid = layAnew(taken);
            if (squares(laid) >= squares(taken)) {
                taken.clear();
                bins.addAll(laid);
            }
        }
        return bins;
    }

    private List<Bin> layAnew(List<Bin> taken) {
        List<Integer> pieces = new ArrayList<>();
        taken.forEach(bin -> pieces.addAll(bin.sizes()));
        Collections.shuffle(pieces, random);
        pieces.sort(Comparator.reverseOrder());
        shuffleALittle(pieces);
        List<Bin> bins = new ArrayList<>();
        while (!pieces.isEmpty()) {
            Integer largest = Collections.max(pieces);
            pieces.remove(largest);
            Bin bin = new Bin();
            bin.add(largest);
            for (Integer size : fill.best(pieces, capacity - largest)) {
                bin.add(size);
                pieces.remove(size);
            }
            bins.add(bin);
        }
        return bins;
    }

    /** Of several fillings that are equally full the first is taken, so which one is first has to vary. */
    private void shuffleALittle(List<Integer> pieces) {
        for (int i = 0; i + 1 < pieces.size(); i++) {
            if (random.nextInt(3) == 0) {
                Collections.swap(pieces, i, i + 1 + random.nextInt(pieces.size() - i - 1));
            }
        }
    }

    private static long squares(List<Bin> bins) {
        return bins.stream().mapToLong(bin -> (long) bin.load() * bin.load()).sum();
    }
}
