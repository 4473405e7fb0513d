package dev.quoin.plate;

import java.util.ArrayList;
import java.util.List;

/** Sizes that lie in one bin, and their sum. */
final class Bin {
    private final List<Integer> sizes = new ArrayList<>();
    private int load;

    void add(int size) {
        sizes.add(size);
        load += size;
    }

    int load() {
        return load;
    }

    List<Integer> sizes() {
        return sizes;
    }
}
