package dev.quoin.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * {@code prepare --watch} of one tray: from just before its template is written until a run stands whose manifest lists
 * that template by its digest, looked for every millisecond. A run appears in one move, so that it is whole then. The first
 * saves find a program that is hardly warm; they count like the others.
 */
final class Watching implements WholeProgram {
    private static final int SAVES = 20;
    private static final double BAR = 0.25;
    /** Between two saves, so that the program is at rest again. */
    private static final long PAUSE_MS = 300;

    private static final long PATIENCE_S = 30;

    @Override
    public void measure(Distribution quoin) throws IOException {
        InventedJob job = quoin.job(20);
        Path run = quoin.run(job);
        Distribution.delete(run);
        Process watch = Child.start(
                Map.of(), quoin.command("prepare", job.folder(), "--watch", "--out", run.toString()));
        try {
            await(watch, run, Files.readAllBytes(job.template()));
            double[] seconds = new double[SAVES];
            for (int i = 0; i < SAVES; i++) {
                Thread.sleep(PAUSE_MS);
                byte[] template = InventedJob.template(2 + (i + 1) / 100.0);
                long start = System.nanoTime();
                Files.write(job.template(), template);
                await(watch, run, template);
                seconds[i] = (System.nanoTime() - start) / 1e9;
            }
            tell(seconds);
        } catch (InterruptedException e) {
            throw new IOException("interrupted", e);
        } finally {
            end(watch);
        }
    }

    private static void tell(double[] seconds) {
        Arrays.sort(seconds);
        System.out.printf(
                "prepare --watch, from save to run    %8.3f s median, %.3f s least, %.3f s most of %d saves  bar: under %.2f s%n",
                seconds[SAVES / 2], seconds[0], seconds[SAVES - 1], SAVES, BAR);
    }

    private static void await(Process watch, Path run, byte[] template) throws IOException, InterruptedException {
        String line = "inputs/" + InventedJob.TEMPLATE_FILE + "," + digest(template) + "\n";
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
        while (!manifest(run).contains(line)) {
            if (!watch.isAlive()) {
                throw new IOException("prepare --watch ended with status " + watch.exitValue());
            }
            if (System.nanoTime() > end) {
                throw new IOException("prepare --watch has written no run of the saved template");
            }
            Thread.sleep(1);
        }
    }

    /** Empty while no run stands there. */
    private static String manifest(Path run) throws IOException {
        try {
            return Files.readString(run.resolve("manifest.csv"));
        } catch (NoSuchFileException notYet) {
            return "";
        }
    }

    private static String digest(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private static void end(Process watch) throws IOException {
        watch.destroy();
        try {
            watch.waitFor();
        } catch (InterruptedException e) {
            throw new IOException("interrupted", e);
        }
    }
}
