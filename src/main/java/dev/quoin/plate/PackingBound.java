package dev.quoin.plate;

/**
 * A number of bins below which no packing can go: the bound L2 of S. Martello and P. Toth, "Lower bounds and reduction
 * procedures for the bin packing problem", Discrete Applied Mathematics 28 (1990), raised where it can be by the dual
 * feasible functions of S. Fekete and J. Schepers, "New classes of fast lower bounds for bin packing problems",
 * Mathematical Programming 91 (2001).
 */
final class PackingBound {
    /** The functions of higher order rarely help, and each costs a look at every size. */
    private static final int HIGHEST_ORDER = 20;

    private final int capacity;
    /** How many pieces there are of each size. */
    private final long[] counts;

    private PackingBound(int[] sizes, int capacity) {
        this.capacity = capacity;
        this.counts = new long[capacity + 1];
        for (int size : sizes) {
            counts[size]++;
        }
    }

    /** The bound for pieces of sizes from 1 to the capacity. */
    static int of(int[] sizes, int capacity) {
        PackingBound bound = new PackingBound(sizes, capacity);
        long most = 0;
        for (int small = 0; small <= capacity / 2; small++) {
            most = Math.max(most, bound.withoutSmall(small));
        }
        for (int order = 1; order <= HIGHEST_ORDER; order++) {
            most = Math.max(most, bound.rounded(order));
        }
        return Math.toIntExact(most);
    }

    /** L2 for one threshold: pieces below {@code small} are left out; pieces over half a bin have a bin each. */
    private long withoutSmall(int small) {
        long bins = 0;
        long space = 0;
        long rest = 0;
        for (int size = Math.max(1, small); size <= capacity; size++) {
            if (size > capacity - small) {
                bins += counts[size];
            } else if (2 * size > capacity) {
                bins += counts[size];
                space += counts[size] * (capacity - size);
            } else {
                rest += counts[size] * size;
            }
        }
        return bins + Math.max(0, ceilDiv(rest - space, capacity));
    }

    /**
     * The sizes rounded to multiples of a bin's {@code 1/order}: with {@code x = size / capacity}, {@code x} itself where
     * {@code (order + 1) x} is whole, else {@code floor((order + 1) x) / order}. Sums are kept in units of
     * {@code 1 / (capacity order)}.
     */
    private long rounded(int order) {
        long sum = 0;
        for (int size = 1; size <= capacity; size++) {
            long scaled = (order + 1L) * size;
            long unit = scaled % capacity == 0 ? (long) size * order : scaled / capacity * capacity;
            sum += counts[size] * unit;
        }
        return ceilDiv(sum, (long) capacity * order);
    }

    private static long ceilDiv(long a, long b) {
        return -Math.floorDiv(-a, b);
    }
}
