package dev.quoin.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * A finished process, or several that ran at once.
 *
 * @param seconds by the clock, until the last had ended
 * @param peakMb the most memory that one held, as the system says at short intervals; 0 where it does not
 */
record Child(double seconds, long peakMb) {
    private static final long LOOK_EVERY_MS = 5;

    /** @throws IOException if it does not end with status 0 */
    static Child run(Map<String, String> environment, List<String> command) throws IOException {
        return together(environment, List.of(command));
    }

    /**
     * Runs commands at once.
     *
     * @throws IOException if one does not end with status 0; the others are ended
     */
    static Child together(Map<String, String> environment, List<List<String>> commands) throws IOException {
        List<Process> processes = new ArrayList<>();
        try {
            long start = System.nanoTime();
            for (List<String> command : commands) {
                processes.add(start(environment, command));
            }
            long peak = 0;
            for (Process process : processes) {
                while (!process.waitFor(LOOK_EVERY_MS, TimeUnit.MILLISECONDS)) {
                    peak = Math.max(peak, peakKb(processes));
                }
                if (process.exitValue() != 0) {
                    throw new IOException(
                            commands.get(processes.indexOf(process)) + " ended with status " + process.exitValue());
                }
            }
            return new Child((System.nanoTime() - start) / 1e9, peak / 1024);
        } catch (InterruptedException e) {
            throw new IOException("interrupted", e);
        } finally {
            processes.forEach(Process::destroy);
        }
    }

    /** Starts a command, whose complaints are shown, and nothing else of what it says. */
    static Process start(Map<String, String> environment, List<String> command) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.INHERIT);
        builder.environment().putAll(environment);
        return builder.start();
    }

    private static long peakKb(List<Process> processes) {
        return processes.stream().mapToLong(process -> peakKb(process.pid())).max().orElse(0);
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
