package dev.quoin.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The program from its start to its end, through the launcher of the distribution, against what stands beside it in the
 * same run: a bare Java program, and a copy of the run folder. It prints a line for each, with the ratio.
 */
final class WholeProgram {
    private static final Map<String, String> PLAIN = Map.of();
    /** A small heap must do for any number of items. */
    private static final Map<String, String> SMALL_HEAP = Map.of("QUOIN_JAVA_OPTS", "-Xmx256m");

    private static final int SHORT_RUNS = 7;
    private static final int LONG_RUNS = 3;

    private final String quoin;
    private final Path work;

    private WholeProgram(String quoin, Path work) {
        this.quoin = quoin;
        this.work = work;
    }

    /**
     * Runs all.
     *
     * @param distribution its folder
     * @param work a folder to work in, which is emptied
     * @param mostItems 100,000 or 1,000,000
     */
    static void run(Path distribution, Path work, int mostItems) throws IOException {
        delete(work);
        Files.createDirectories(work);
        WholeProgram program = new WholeProgram(distribution.resolve("bin").resolve("quoin").toString(), work);
        program.cold();
        double item = program.tenThousand();
        for (int items = 100_000; items <= mostItems; items *= 10) {
            program.more(items, item);
        }
        delete(work);
    }

    /** A tray prepared, and an item of a large run reprinted, by a program just started. */
    private void cold() throws IOException {
        Path tray = job(20);
        prepare(1, PLAIN, tray); // Makes the class archive.
        Child bare = bareJava();
        Child prepare = prepare(SHORT_RUNS, PLAIN, tray);
        System.out.printf("bare Java program                   %8.3f s%n", bare.seconds());
        System.out.printf(
                "prepare of one tray, cold           %8.3f s  %5.1f times a bare program  peak %d MB%n",
                prepare.seconds(), prepare.seconds() / bare.seconds(), prepare.peakMb());
        prepare(1, PLAIN, job(10_000));
        Child reprint = Child.median(
                SHORT_RUNS, PLAIN, List.of(quoin, "reprint", run(job(10_000)).toString(), "--item", "5037", "--quiet"));
        System.out.printf(
                "reprint of one item of 10,000, cold %8.3f s  %5.1f times a bare program  peak %d MB%n",
                reprint.seconds(), reprint.seconds() / bare.seconds(), reprint.peakMb());
    }

    private static Child bareJava() throws IOException {
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        return Child.median(
                SHORT_RUNS,
                PLAIN,
                List.of(
                        java.toString(),
                        "-Xshare:auto",
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Bare.class.getName()));
    }

    /** On one thread and on two. */
    private void threads(int times, Path job) throws IOException {
        Child one = prepare(times, SMALL_HEAP, job, "--threads", "1");
        Child two = prepare(times, SMALL_HEAP, job, "--threads", "2");
        System.out.printf(
                "on one thread, on two               %8.3f s, %.3f s: %.2f times as fast%n",
                one.seconds(), two.seconds(), one.seconds() / two.seconds());
    }

    /** Against a copy of what was written, and on one thread and two; the time of an item. */
    private double tenThousand() throws IOException {
        Path job = job(10_000);
        Child all = prepare(LONG_RUNS, SMALL_HEAP, job);
        Child copy = copy(run(job));
        double start = bareJava().seconds();
        System.out.printf(
                "prepare of 10,000 items             %8.3f s  peak %d MB%ncopy of that run                    %8.3f s%n",
                all.seconds(), all.peakMb(), copy.seconds());
        System.out.printf(
                "                                              %5.1f times a copy, less the start of Java%n",
                (all.seconds() - start) / copy.seconds());
        threads(LONG_RUNS, job);
        return all.seconds() / 10_000;
    }

    private void more(int items, double ofTenThousand) throws IOException {
        Child prepare = prepare(1, SMALL_HEAP, job(items));
        System.out.printf(
                "prepare of %,9d items           %8.3f s  an item takes %.2f times as long as of 10,000  peak %d MB%n",
                items, prepare.seconds(), prepare.seconds() / items / ofTenThousand, prepare.peakMb());
        if (items == 100_000) {
            threads(1, job(items));
        }
        delete(run(job(items)));
    }

    private Path job(int items) throws IOException {
        Path folder = work.resolve("items-" + items);
        return Files.exists(folder) ? folder : InventedJob.of(items, folder).folder();
    }

    private Path run(Path job) {
        return work.resolve("run-of-" + job.getFileName());
    }

    private Child prepare(int times, Map<String, String> environment, Path job, String... more) throws IOException {
        List<Child> runs = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            delete(run(job));
            List<String> command = new ArrayList<>(
                    List.of(quoin, "prepare", job.toString(), "--quiet", "--out", run(job).toString()));
            command.addAll(List.of(more));
            runs.add(Child.run(environment, command));
        }
        runs.sort((a, b) -> Double.compare(a.seconds(), b.seconds()));
        return runs.get(times / 2);
    }

    private Child copy(Path run) throws IOException {
        List<Child> runs = new ArrayList<>();
        for (int i = 0; i < LONG_RUNS; i++) {
            Path copy = work.resolve("copy");
            delete(copy);
            runs.add(Child.run(PLAIN, List.of("cp", "-r", run.toString(), copy.toString())));
        }
        runs.sort((a, b) -> Double.compare(a.seconds(), b.seconds()));
        return runs.get(LONG_RUNS / 2);
    }

    private static void delete(Path root) throws IOException {
        if (Files.exists(root)) {
            List<Path> all;
            try (Stream<Path> found = Files.walk(root)) {
                all = new ArrayList<>(found.toList());
            }
            for (int i = all.size() - 1; i >= 0; i--) {
                Files.delete(all.get(i));
            }
        }
    }
}
