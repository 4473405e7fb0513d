package dev.quoin.bench;

import java.io.IOException;
import java.util.Map;

/** A tray prepared, and an item of a large run reprinted, by a program just started, against a bare Java program. */
final class ColdStarts implements WholeProgram {
    private static final int RUNS = 7;

    @Override
    public void measure(Distribution quoin) throws IOException {
        InventedJob tray = quoin.job(20);
        InventedJob large = quoin.job(10_000);
        quoin.prepare(Map.of(), large);
        double bare = Runs.of(RUNS, Bare::run).median().seconds();
        tell("prepare of one tray, cold", Runs.of(RUNS, () -> quoin.prepare(Map.of(), tray)), bare);
        tell(
                "reprint of one item of 10,000, cold",
                Runs.of(
                        RUNS,
                        () -> Child.run(Map.of(), quoin.command("reprint", quoin.run(large), "--item", "5037"))),
                bare);
    }

    private static void tell(String what, Runs runs, double bare) {
        Child median = runs.median();
        System.out.printf(
                "%-36s %8.3f s  %.1f times a bare Java program (%.3f s), medians of %d, bar: at most 8  peak %d MB, bar: at most 120%n",
                what, median.seconds(), median.seconds() / bare, bare, RUNS, median.peakMb());
    }
}
