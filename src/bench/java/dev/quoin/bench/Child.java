package dev.quoin.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * A finished process.
 *
 * @param seconds by the clock
 * @param peakMb the most memory that it held, as the system says at short intervals; 0 where it does not
 */
record Child(double seconds, long peakMb) {
    private static final long LOOK_EVERY_MS = 5;

    /** Runs a command so many times; the one of the median time. */
    static Child median(int times, Map<String, String> environment, List<String> command) throws IOException {
        Child[] runs = new Child[times];
        for (int i = 0; i < times; i++) {
            runs[i] = run(environment, command);
        }
        Arrays.sort(runs, (a, b) -> Double.compare(a.seconds, b.seconds));
        return runs[times / 2];
    }

    /** @throws IOException if it does not end with status 0 */
    static Child run(Map<String, String> environment, List<String> command) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.INHERIT);
        builder.environment().putAll(environment);
        long start = System.nanoTime();
        Process process = builder.start();
        long peak = 0;
        try {
            while (!process.waitFor(LOOK_EVERY_MS, TimeUnit.MILLISECONDS)) {
                peak = Math.max(peak, peakKb(process.pid()));
            }
        } catch (InterruptedException e) {
            process.destroy();
            throw new IOException("interrupted", e);
        }
        double seconds = (System.nanoTime() - start) / 1e9;
        if (process.exitValue() != 0) {
            throw new IOException(command + " ended with status " + process.exitValue());
        }
        return new Child(seconds, peak / 1024);
    }

    private static long peakKb(long pid) {
        try {
            return Files.readAllLines(Path.of("/proc/" + pid + "/status")).stream()
                    .filter(line -> line.startsWith("VmHWM:"))
                    .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
                    .findFirst()
                    .orElse(0);
        } catch (IOException gone) {
            return 0;
        }
    }
}
