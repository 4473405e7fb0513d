package dev.quoin.store;

import dev.quoin.table.TableWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.concurrent.locks.LockSupport;

/**
 * The record of what happened to a run: {@code record/log.csv}, to which lines are only ever added, under a lock. A line
 * that a kill cut short is closed off before the next is added, so that it harms no other.
 */
public final class RunLog {
    public static final String FILE = "record/log.csv";
    private static final long WAIT_NANOS = 5_000_000;

    private final Path file;

    public RunLog(Path run) {
        this.file = run.resolve(FILE);
    }

    /** Work to be done while no other program adds to this log. */
    @FunctionalInterface
    public interface LockedWork {
        /** Does it, and says what is to be added to the log. */
        List<RunEvent> run() throws IOException;
    }

    /** Adds events, in one piece. */
    public void add(List<RunEvent> events) throws IOException {
        addAfter(() -> events);
    }

    /** Whether anything was ever added. */
    boolean exists() {
        return file.toFile().length() > 0;
    }

    /** What it says so far; nothing if there is none. */
    public LogBook read() throws IOException {
        return LogReader.read(Files.exists(file) ? Files.readAllBytes(file) : new byte[0]);
    }

    /** Takes the lock, does the work, adds the events it returns, and gives the lock back. */
    public void addAfter(LockedWork work) throws IOException {
        Files.createDirectories(file.getParent());
        try (FileChannel channel = FileChannel.open(
                        file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
                FileLock lock = lock(channel)) {
            List<RunEvent> events = work.run();
            if (events.isEmpty()) {
                return;
            }
            byte[] before = content(channel);
            String text = opening(before) + lines(LogReader.lastCheck(before), events);
            ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
            channel.position(channel.size());
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
            if (!lock.isValid()) {
                throw new IOException("the lock on " + file.getFileName() + " was lost");
            }
        }
    }

    /** Waits for other programs, and for other threads of this one, of which the platform's lock knows nothing. */
    private static FileLock lock(FileChannel channel) throws IOException {
        while (true) {
            try {
                return channel.lock();
            } catch (OverlappingFileLockException heldByAnotherThread) {
                LockSupport.parkNanos(WAIT_NANOS);
            }
        }
    }

    private static byte[] content(FileChannel channel) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate((int) channel.size());
        channel.position(0);
        while (bytes.hasRemaining() && channel.read(bytes) >= 0) {
            continue;
        }
        return bytes.array();
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
