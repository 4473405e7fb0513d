package dev.quoin.plate;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Lays pieces into as few bins of one capacity as it can: first fit, the largest first, which needs at most 11/9 of the
 * least number and 6/9 (G. Dosa, "The tight bound of first fit decreasing bin-packing algorithm", 2007); then, unless a
 * bound proves that to be the least, a search for better ({@link Repacking}), of a limited number of steps. The
 * same pieces always give the same bins.
 */
public final class BinPacking {
    private BinPacking() {}

    /**
     * Packs pieces.
     *
     * @param sizes of the pieces, each from 1 to the capacity; an index names a piece
     * @throws IllegalArgumentException if a size is out of that range
     */
    public static Packing pack(int[] sizes, int capacity) {
        for (int size : sizes) {
            if (size < 1 || size > capacity) {
                throw new IllegalArgumentException("a piece of " + size + " for bins of " + capacity);
            }
        }
        int bound = PackingBound.of(sizes, capacity);
        List<Bin> bins = firstFitDecreasing(sizes, capacity);
        if (bins.size() > bound) {
            bins = new Repacking(capacity, bound).improve(bins);
        }
        return new Packing(named(bins, sizes), bound);
    }

    /** The pieces by size only; a bin that is too full for a size is passed over once for all pieces of that size. */
    private static List<Bin> firstFitDecreasing(int[] sizes, int capacity) {
        int[] ascending = sizes.clone();
        Arrays.sort(ascending);
        List<Bin> bins = new ArrayList<>();
        int first = 0;
        for (int i = ascending.length - 1; i >= 0; i--) {
            int size = ascending[i];
            first = i + 1 < ascending.length && ascending[i + 1] == size ? first : 0;
            while (first < bins.size() && bins.get(first).load() + size > capacity) {
                first++;
            }
            if (first == bins.size()) {
                bins.add(new Bin());
            }
            bins.get(first).add(size);
        }
        return bins;
    }

    /** Gives each size in the bins the next piece of that size. */
    private static List<List<Integer>> named(List<Bin> bins, int[] sizes) {
        Map<Integer, Deque<Integer>> pieces = new HashMap<>();
        for (int i = 0; i < sizes.length; i++) {
            pieces.computeIfAbsent(sizes[i], size -> new ArrayDeque<>()).add(i);
        }
        return bins.stream()
                .map(bin -> bin.sizes().stream()
                        .map(size -> pieces.get(size).remove())
                        .sorted()
                        .toList())
                .toList();
    }
}
