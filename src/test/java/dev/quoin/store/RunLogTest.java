package dev.quoin.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The record: lines are only added, a kill in the middle harms no other line, and two programs at once do not either. */
class RunLogTest {
    @TempDir
    private Path run;

    @Test
    void whatIsAddedIsReadBack() throws IOException {
        RunEvent event = new RunEvent(
                Instant.parse("2026-03-05T10:00:00Z"),
                RunEvent.Kind.FAILED,
                3,
                9,
                "B2",
                OptionalDouble.of(461),
                "slipped, \"again\"",
                "reprints/reprint-001.svg");
        new RunLog(run).add(List.of(done(1), event));
        assertEquals(new LogBook(List.of(done(1), event), List.of(), List.of()), new RunLog(run).read());
    }

    @Test
    void aReasonOfSeveralLinesBecomesOne() throws IOException {
        RunEvent event = new RunEvent(
                Instant.EPOCH, RunEvent.Kind.FAILED, 1, 1, "A", OptionalDouble.empty(), "slipped\nbadly\t", "");
        assertEquals("slipped badly", event.reason());
    }

    @Test
    void cutAtAnyByteTheLinesBeforeAreReadAndThoseAddedLaterToo() throws IOException {
        new RunLog(run).add(List.of(done(1), done(2)));
        byte[] whole = Files.readAllBytes(log());
        int header = LogReader.HEADER.length() + 1;
        int second = new String(whole, StandardCharsets.UTF_8).indexOf('\n', header) + 1;
        for (int cut = header; cut <= whole.length; cut++) {
            Files.write(log(), Arrays.copyOf(whole, cut));
            new RunLog(run).add(List.of(done(3)));
            LogBook book = new RunLog(run).read();
            List<RunEvent> expected = new ArrayList<>();
            if (cut >= second - 1) {
                expected.add(done(1));
            }
            if (cut >= whole.length - 1) {
                expected.add(done(2));
            }
            expected.add(done(3));
            assertEquals(expected, book.events(), "cut at " + cut);
            assertEquals(List.of(), book.damaged(), "cut at " + cut);
        }
    }

    @Test
    void aChangedByteIsTakenForDamageAndSparesTheOtherLines() throws IOException {
        new RunLog(run).add(List.of(done(1), done(2), done(3)));
        byte[] whole = Files.readAllBytes(log());
        for (int at = 0; at < whole.length; at++) {
            byte[] changed = whole.clone();
            changed[at] ^= 1;
            Files.write(log(), changed);
            LogBook book = new RunLog(run).read();
            assertTrue(!book.damaged().isEmpty(), "byte " + at);
            assertTrue(book.events().size() >= 1, "byte " + at);
        }
    }

    @Test
    void twoThreadsAtOnceLoseNothing() throws Exception {
        List<Thread> threads = IntStream.range(0, 4)
                .mapToObj(number -> new Thread(() -> addFifty(run, number)))
                .toList();
        threads.forEach(Thread::start);
        for (Thread thread : threads) {
            thread.join();
        }
        assertEquals(new LogBook(new RunLog(run).read().events(), List.of(), List.of()), new RunLog(run).read());
        assertEquals(200, new RunLog(run).read().events().size());
    }

    @Test
    void twoProgramsAtOnceLoseNothing() throws Exception {
        List<Process> programs = List.of(program(Adds.class, "1"), program(Adds.class, "2"));
        for (Process program : programs) {
            assertEquals(0, program.waitFor());
        }
        LogBook book = new RunLog(run).read();
        assertEquals(100, book.events().size());
        assertEquals(List.of(), book.damaged());
        assertEquals(List.of(), book.cutShort());
    }

    @Test
    void workThatAddsNothingLeavesNothing() throws IOException {
        new RunLog(run).addAfter(book -> List.of());
        assertFalse(Files.exists(log().getParent()));
    }

    @Test
    void refusedWorkLeavesNothing() {
        assertThrows(
                NoSuchFileException.class,
                () -> new RunLog(run).addAfter(book -> {
                    throw new NoSuchFileException("order.csv");
                }));
        assertFalse(Files.exists(log().getParent()));
    }

    @Test
    void otherFilesBesideTheLogStay() throws IOException {
        Path notes = run.resolve("record/notes.txt");
        Files.createDirectories(notes.getParent());
        Files.writeString(notes, "blunt");
        new RunLog(run).addAfter(book -> List.of());
        assertTrue(Files.exists(notes));
    }

    @Test
    void workIsToldWhatTheLogSays() throws IOException {
        new RunLog(run).add(List.of(done(1)));
        new RunLog(run).addAfter(book -> {
            assertEquals(List.of(done(1)), book.events());
            return List.of(done(2));
        });
        assertEquals(List.of(done(1), done(2)), new RunLog(run).read().events());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1})
    void twoProgramsAtOnceNeverWorkAtOnceWhetherThereIsALogOrNot(int events) throws Exception {
        new RunLog(run).addAfter(book -> Collections.nCopies(events, done(1)));
        Files.writeString(run.resolve("count"), "0");
        List<Process> programs = List.of(program(Counts.class, "1"), program(Counts.class, "2"));
        for (Process program : programs) {
            assertEquals(0, program.waitFor());
        }
        assertEquals("1000", Files.readString(run.resolve("count")));
        assertEquals(events > 0, Files.exists(log()));
    }

    /** Started as a program of its own by a test: adds fifty lines to the record of a run. */
    public static final class Adds {
        private Adds() {}

        public static void main(String[] args) {
            addFifty(Path.of(args[0]), Integer.parseInt(args[1]));
        }
    }

    /** Started as a program of its own by a test: raises a number in a file five hundred times, under the lock. */
    public static final class Counts {
        private Counts() {}

        public static void main(String[] args) throws IOException {
            Path run = Path.of(args[0]);
            Path count = run.resolve("count");
            for (int i = 0; i < 500; i++) {
                new RunLog(run).addAfter(book -> {
                    int before = Integer.parseInt(Files.readString(count));
                    Files.writeString(count, String.valueOf(before + 1));
                    return List.of();
                });
            }
        }
    }

    private Process program(Class<?> main, String number) throws IOException {
        String java = System.getProperty("java.home") + File.separator + "bin" + File.separator + "java";
        return new ProcessBuilder(
                        java, "-cp", System.getProperty("java.class.path"), main.getName(), run.toString(), number)
                .inheritIO()
                .start();
    }

    private static void addFifty(Path run, int plate) {
        for (int i = 0; i < 50; i++) {
            try {
                new RunLog(run).add(List.of(done(plate + 1)));
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        }
    }

    private Path log() {
        return run.resolve(RunLog.FILE);
    }

    private static RunEvent done(int plate) {
        return new RunEvent(
                Instant.parse("2026-03-05T09:00:00Z"),
                RunEvent.Kind.DONE,
                plate,
                0,
                "",
                OptionalDouble.empty(),
                "",
                "");
    }
}
