package dev.quoin.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * 10,000 items prepared, against what writing and hashing the same files takes by themselves: a copy of the run, and the
 * digests of its files, since each file that is written is hashed for the manifest. Then that run verified and its order
 * quoted, for the record.
 */
final class TenThousandItems implements WholeProgram {
    private static final int ITEMS = 10_000;
    private static final int RUNS = 3;
    private static final int COPIES = 5;
    private static final String DIGESTS = "find \"$1\" -type f -print0 | xargs -0 sha256sum";

    @Override
    public void measure(Distribution quoin) throws IOException {
        InventedJob job = quoin.job(ITEMS);
        Path run = quoin.run(job);
        double start = Runs.of(RUNS, Bare::run).median().seconds();
        Child prepare =
                Runs.of(RUNS, () -> quoin.prepare(Distribution.SMALL_HEAP, job)).median();
        double work = prepare.seconds() - start;
        double megabytes = bytes(run) / 1e6;
        System.out.printf(
                "prepare of 10,000 items              %8.3f s, median of %d; %.3f s without the start of Java  run of %.1f MB  peak %d MB%n",
                prepare.seconds(), RUNS, work, megabytes, prepare.peakMb());
        tellCopies(Runs.of(COPIES, () -> copy(run, quoin.work().resolve("copy"))), work, megabytes);
        tellDigests(run, work, megabytes);
        perThousand("verify of that run", quoin.command("verify", run));
        perThousand("quote of that order", quoin.command("quote", job.folder()));
    }

    private static void tellCopies(Runs copies, double work, double megabytes) {
        double median = copies.median().seconds();
        double least = copies.least().seconds();
        System.out.printf(
                "copy of that run (cp -r)             %8.3f s, median of %d: %,.0f MB/s; prepare takes %.1f times as long, bar: at most 10%n",
                median, COPIES, megabytes / median, work / median);
        System.out.printf(
                "the quickest of those copies         %8.3f s: %,.0f MB/s; prepare takes %.1f times as long%n",
                least, megabytes / least, work / least);
    }

    private static void tellDigests(Path run, double work, double megabytes) throws IOException {
        if (!hasDigests()) {
            System.out.println("digests of that run                  left out, since this machine has no sha256sum");
            return;
        }
        List<String> command = List.of("sh", "-c", DIGESTS, "sh", run.toString());
        double digests = Runs.of(RUNS, () -> Child.run(Map.of(), command)).median().seconds();
        System.out.printf(
                "digests of that run (sha256sum)      %8.3f s, median of %d: %,.0f MB/s; prepare takes %.1f times as long%n",
                digests, RUNS, megabytes / digests, work / digests);
    }

    private static boolean hasDigests() {
        try {
            Child.run(Map.of(), List.of("sh", "-c", "command -v sha256sum"));
            return true;
        } catch (IOException notThere) {
            return false;
        }
    }

    private static void perThousand(String what, List<String> command) throws IOException {
        double seconds = Child.run(Distribution.SMALL_HEAP, command).seconds();
        System.out.printf("%-36s %8.3f s: %.3f s per 1,000 items%n", what, seconds, seconds * 1000 / ITEMS);
    }

    private static Child copy(Path run, Path copy) throws IOException {
        Distribution.delete(copy);
        return Child.run(Map.of(), List.of("cp", "-r", run.toString(), copy.toString()));
    }

    private static long bytes(Path run) throws IOException {
        long bytes = 0;
        try (Stream<Path> all = Files.walk(run)) {
            for (Path path : all.filter(Files::isRegularFile).toList()) {
                bytes += Files.size(path);
            }
        }
        return bytes;
    }
}
