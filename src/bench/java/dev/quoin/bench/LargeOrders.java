package dev.quoin.bench;

import java.io.IOException;

/** 100,000 items prepared, and a million if asked for, with a small heap, against as many times 10,000. */
record LargeOrders(int most) implements WholeProgram {
    private static final int SMALL = 10_000;

    @Override
    public void measure(Distribution quoin) throws IOException {
        InventedJob small = quoin.job(SMALL);
        double ofSmall = Runs.of(3, () -> quoin.prepare(Distribution.SMALL_HEAP, small))
                        .median()
                        .seconds()
                / SMALL;
        for (int items = 10 * SMALL; items <= most; items *= 10) {
            InventedJob large = quoin.job(items);
            Child prepare = quoin.prepare(Distribution.SMALL_HEAP, large);
            Distribution.delete(quoin.run(large));
            double ofLarge = prepare.seconds() / items;
            System.out.printf(
                    "prepare of %,9d items           %8.3f s  an item takes %.3f ms, %.2f times as long as of 10,000 (%.3f ms), bar: at most 1.1  peak %d MB%n",
                    items, prepare.seconds(), ofLarge * 1e3, ofLarge / ofSmall, ofSmall * 1e3, prepare.peakMb());
        }
    }
}
