package dev.quoin.store;

import dev.quoin.table.TableWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;

/**
 * The record of what happened to a run: {@code record/log.csv}, to which lines are only ever added, under a lock. A line
 * that a kill cut short is closed off before the next is added, so that it harms no other. A run to which nothing was
 * added has no such file, except while the lock is held.
 */
public final class RunLog {
    public static final String FILE = "record/log.csv";

    private final Path file;

    public RunLog(Path run) {
        this.file = run.resolve(FILE);
    }

    /** Work to be done while no other program adds to this log. */
    @FunctionalInterface
    public interface LockedWork {
        /**
         * Does it, and says what is to be added to the log.
         *
         * @param book what the log says, under the lock
         */
        List<RunEvent> run(LogBook book) throws IOException;
    }

    /** Adds events, in one piece. */
    public void add(List<RunEvent> events) throws IOException {
        addAfter(book -> events);
    }

    /** Whether anything was ever added. */
    boolean exists() {
        return file.toFile().length() > 0;
    }

    /**
     * What it says so far; nothing if there is none. Not for {@link LockedWork}, which is told: to close the file anywhere
     * in a program gives back all the locks that the program has on it.
     */
    public LogBook read() throws IOException {
        try {
            return LogReader.read(Files.readAllBytes(file));
        } catch (NoSuchFileException nothingAdded) {
            return LogReader.read(new byte[0]);
        }
    }

    /** Takes the lock, does the work, adds the events it returns, and gives the lock back. */
    public void addAfter(LockedWork work) throws IOException {
        try (LockedFile locked = LockedFile.of(file)) {
            byte[] before = locked.content();
            List<RunEvent> events = work.run(LogReader.read(before));
            if (!events.isEmpty()) {
                String text = opening(before) + lines(LogReader.lastCheck(before), events);
                locked.add(text.getBytes(StandardCharsets.UTF_8));
            }
        }
    }

    private static String opening(byte[] before) {
        if (before.length == 0) {
            return LogReader.HEADER + "\n";
        }
        return before[before.length - 1] == '\n' ? "" : "\n";
    }

    private static String lines(String lastCheck, List<RunEvent> events) {
        StringBuilder text = new StringBuilder();
        String check = lastCheck;
        for (RunEvent event : events) {
            String line = LogChain.sealed(check, line(event.cells()));
            check = LogChain.stated(line);
            text.append(line).append('\n');
        }
        return text.toString();
    }

    private static String line(List<String> cells) {
        StringWriter text = new StringWriter();
        try {
            new TableWriter(text).row(cells);
        } catch (IOException e) {
            throw new UncheckedIOException("a string cannot fail to be written", e);
        }
        return text.getBuffer().substring(0, text.getBuffer().length() - 1);
    }
}
