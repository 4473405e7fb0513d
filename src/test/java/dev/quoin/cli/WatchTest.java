package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code prepare --watch} follows what is saved, and says in a line what has come of it. */
class WatchTest {
    private static final long PATIENCE_S = 30;

    @TempDir
    private Path folder;

    private final BlockingQueue<String> said = new LinkedBlockingQueue<>();
    private final CompletableFuture<Integer> status = new CompletableFuture<>();
    private JobFolder job;
    private Thread watch;

    @BeforeEach
    void makeJob() {
        job = new JobFolder(folder);
        watch = new Thread(
                () -> status.complete(new Quoin(lines(), lines(), folder, false).run("prepare", "job", "--watch")));
    }

    @AfterEach
    void end() throws InterruptedException {
        watch.interrupt();
        watch.join();
    }

    /** Takes what is printed, line by line; the printer writes line ends on their own. */
    private PrintWriter lines() {
        return new PrintWriter(
                new Writer() {
                    private final StringBuilder line = new StringBuilder();

                    @Override
                    public void write(char[] text, int from, int count) {
                        line.append(text, from, count);
                        for (int end = line.indexOf("\n"); end >= 0; end = line.indexOf("\n")) {
                            said.add(line.substring(0, end).strip());
                            line.delete(0, end + 1);
                        }
                    }

                    @Override
                    public void flush() {
                        // Lines are passed on as they end.
                    }

                    @Override
                    public void close() {
                        // Nothing is held open.
                    }
                },
                true);
    }

    private String next() throws InterruptedException {
        String line = said.poll(PATIENCE_S, TimeUnit.SECONDS);
        assertNotNull(line, "nothing was said");
        return line;
    }

    /** The next line that begins so; others, of a save seen in two halves, are passed over. */
    private String next(String start) throws InterruptedException {
        String line = next();
        while (!line.startsWith(start)) {
            line = next();
        }
        return line;
    }

    private void begin() throws InterruptedException {
        watch.start();
        next("runs/job: 1 plate, 2 items");
        next("watching");
    }

    @Test
    void preparesAgainWhenTheOrderIsSaved() throws Exception {
        begin();
        job.order("Name", "Ada", "Grace", "Hedy");
        assertTrue(next("runs/job: 1 plate, 3 items").endsWith(" s"));
        assertEquals(4, Files.readAllLines(job.run().resolve("items.csv")).size());
    }

    @Test
    void errorsAreToldAndTheRunStaysUntilTheyAreCorrected() throws Exception {
        begin();
        List<String> before = Files.readAllLines(job.run().resolve("items.csv"));
        job.template(JobFolder.text("${nmae}"));
        next("nothing was written");
        assertEquals(before, Files.readAllLines(job.run().resolve("items.csv")));
        job.template(JobFolder.text("${name}"));
        next("runs/job: 1 plate, 2 items");
    }

    @Test
    void aRunThatStandsThereAlreadyIsNotReplaced() throws Exception {
        assertEquals(0, job.prepare().status());
        watch.start();
        assertEquals(3, status.get(PATIENCE_S, TimeUnit.SECONDS));
    }

    @Test
    void itEndsWhereWorkOnTheRunIsRecorded() throws Exception {
        begin();
        assertEquals(0, job.quoin("done", "runs/job", "--plate", "1").status());
        job.order("Name", "Ada");
        assertEquals(3, status.get(PATIENCE_S, TimeUnit.SECONDS));
        assertTrue(next("").contains("it has a record of work done"));
    }

    @Test
    void anInterruptEndsIt() throws Exception {
        begin();
        watch.interrupt();
        assertEquals(0, status.get(PATIENCE_S, TimeUnit.SECONDS));
    }
}
