package dev.quoin.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Given a full disk or a kill, then no half run is left, and the next run comes through. */
class DiskTest {
    private static final int PATIENCE_S = 120;

    @TempDir
    Path folder;

    private boolean mounted;

    @AfterEach
    void takeTheSmallDiskAway() throws Exception {
        if (mounted) {
            assertEquals(0, command("umount", folder.resolve("disk").toString()));
        }
    }

    @Test
    void aFullDiskLeavesNothing() throws Exception {
        Path disk = smallDisk("64k");
        JobFolder job = new JobFolder(folder).order(names(40));
        QuoinRun run = job.prepare("--out", "disk/runs/job");
        assertEquals(3, run.status());
        assertEquals(
                List.of(folder.resolve("disk/runs/job")
                        + ": the run could not be written (No space left on device), and nothing of it is left;"
                        + " make room, or choose another place with --out"),
                run.err());
        assertEquals(List.of(""), List.copyOf(JobFolder.contents(disk).keySet()));
    }

    @Test
    void aReprintThatFindsTheDiskFullLeavesTheRunAsItWas() throws Exception {
        Path disk = smallDisk("400k");
        JobFolder job = new JobFolder(folder);
        assertEquals(0, job.prepare("--out", "disk/job").status());
        fill(disk.resolve("filler"));
        SortedMap<String, byte[]> before = JobFolder.contents(disk.resolve("job"));
        QuoinRun run = job.quoin("reprint", "disk/job", "--item", "1");
        assertEquals(3, run.status());
        assertEquals(1, run.err().size(), run.err().toString());
        String said = run.err().get(0);
        assertTrue(said.startsWith(disk.resolve("job").toString()) && said.contains("No space left on device"), said);
        SortedMap<String, byte[]> after = JobFolder.contents(disk.resolve("job"));
        for (Map.Entry<String, byte[]> file : before.entrySet()) {
            assertArrayEquals(file.getValue(), after.get(file.getKey()), file.getKey());
        }
        assertTrue(
                after.keySet().stream().noneMatch(name -> name.contains("reprint-")), () -> "left: " + after.keySet());

        Files.delete(disk.resolve("filler"));
        assertEquals(0, job.quoin("reprint", "disk/job", "--item", "1").status());
        assertEquals(2, Files.readAllLines(disk.resolve("job/record/log.csv")).size());
    }

    @Test
    void ofTwoReprintsTheFirstDoesNotStayIfTheSecondCannotBeWritten() throws Exception {
        JobFolder job = new JobFolder(folder).order(names(7)).jig("A1,0,0,0,60,30,yes");
        assertEquals(0, job.prepare().status());
        Path inTheWay = Files.createDirectories(job.run().resolve("reprints/.reprint-002.svg.partial"));

        assertEquals(3, job.quoin("reprint", "runs/job", "--item", "1-2").status());

        assertFalse(Files.exists(inTheWay));
        assertEquals(List.of(), List.of(job.run().resolve("reprints").toFile().list()));
        assertEquals(0, job.quoin("reprint", "runs/job", "--item", "1-2").status());
        assertEquals(3, Files.readAllLines(job.run().resolve("record/log.csv")).size());
    }

    @Test
    void aKillLeavesNoRunAndTheNextRunSweepsUp() throws Exception {
        JobFolder job = new JobFolder(folder).order(names(600));
        Process process = JavaProcess.start(folder, List.of(), "prepare", "job");
        try {
            Path runs = folder.resolve("runs");
            long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
            while (process.isAlive() && hidden(runs).isEmpty() && System.nanoTime() < end) {
                Thread.sleep(2);
            }
            assertTrue(process.isAlive(), () -> "it was over before it could be killed: " + said());
        } finally {
            process.destroyForcibly().waitFor();
        }
        assertFalse(Files.exists(job.run()));
        assertEquals(1, hidden(folder.resolve("runs")).size());

        assertEquals(0, job.order(names(3)).prepare().status());
        assertTrue(Files.exists(job.run().resolve("manifest.csv")));
        assertEquals(List.of(), hidden(folder.resolve("runs")));
    }

    @Test
    void whatAKillLeftBeforeItsLockWasMadeIsSweptToo() throws Exception {
        JobFolder job = new JobFolder(folder);
        Process over = JavaProcess.start(folder, List.of(), "--version");
        over.waitFor();
        Files.createDirectories(folder.resolve("runs/.job.partial-" + over.pid()));
        Files.createDirectories(
                folder.resolve("runs/.job.partial-" + ProcessHandle.current().pid() + "/inputs"));
        assertEquals(0, job.prepare().status());
        assertEquals(List.of(), hidden(folder.resolve("runs")));
    }

    private String said() {
        try {
            return Files.readString(folder.resolve("said.txt"));
        } catch (IOException e) {
            return e.toString();
        }
    }

    private static List<String> hidden(Path runs) throws IOException {
        if (!Files.exists(runs)) {
            return List.of();
        }
        try (var files = Files.list(runs)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.startsWith("."))
                    .toList();
        }
    }

    private static String[] names(int count) {
        List<String> lines = new ArrayList<>(List.of("Name"));
        for (int i = 0; i < count; i++) {
            lines.add("Person " + i);
        }
        return lines.toArray(String[]::new);
    }

    private static void fill(Path file) throws IOException {
        try (var out = Files.newOutputStream(file)) {
            while (true) {
                out.write(new byte[512]);
            }
        } catch (IOException full) {
            assertTrue(full.getMessage().contains("No space left"), full.getMessage());
        }
    }

    /** A file system in memory of this size. */
    private Path smallDisk(String size) throws Exception {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        mounted = command("mount", "-t", "tmpfs", "-o", "size=" + size, "tmpfs", disk.toString()) == 0;
        Assumptions.assumeTrue(mounted, "skipped: a small file system cannot be mounted here");
        return disk;
    }

    private static int command(String... words) throws InterruptedException {
        try {
            return new ProcessBuilder(words).inheritIO().start().waitFor();
        } catch (IOException none) {
            return -1;
        }
    }
}
