package dev.quoin.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A job on one thread and on two; and what the machine itself gives: two programs of one thread each at once, each writing
 * a run of its own of the same job, against one such program alone. The later of the two ends the measurement.
 */
final class TwoThreads implements WholeProgram {
    @Override
    public void measure(Distribution quoin) throws IOException {
        measure(quoin, 10_000, 3);
        measure(quoin, 100_000, 1);
    }

    private static void measure(Distribution quoin, int items, int times) throws IOException {
        InventedJob job = quoin.job(items);
        double one = seconds(times, () -> quoin.prepare(Distribution.SMALL_HEAP, job, "--threads", "1"));
        double two = seconds(times, () -> quoin.prepare(Distribution.SMALL_HEAP, job, "--threads", "2"));
        Distribution.delete(quoin.run(job));
        double both = seconds(times, () -> twoPrograms(quoin, job));
        System.out.printf(
                "%,9d items, two threads           %8.3f s  %.2f times as fast as one thread (%.3f s), bar: at least 1.6%n",
                items, two, one / two, one);
        System.out.printf(
                "two programs at once, against one    %8.3f s  %.2f times the items a second (one alone: %.3f s); two threads reach %.2f of that%n",
                both, 2 * one / both, one, both / (2 * two));
    }

    private static double seconds(int times, Runs.Once once) throws IOException {
        return Runs.of(times, once).median().seconds();
    }

    private static Child twoPrograms(Distribution quoin, InventedJob job) throws IOException {
        List<Path> runs = List.of(quoin.work().resolve("first"), quoin.work().resolve("second"));
        List<List<String>> commands = new ArrayList<>();
        for (Path run : runs) {
            commands.add(quoin.command("prepare", job.folder(), "--threads", "1", "--out", run.toString()));
        }
        Child both = Child.together(Distribution.SMALL_HEAP, commands);
        for (Path run : runs) {
            Distribution.delete(run);
        }
        return both;
    }
}
