package dev.quoin.store;

import dev.quoin.table.TableWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;

/**
 * The record of what happened to a run: {@code record/log.csv}, to which lines are only ever added, under a lock. A line
 * that a kill cut short is closed off before the next is added, so that it harms no other.
 */
public final class RunLog {
    static final String FILE = "record/log.csv";

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

    /** Takes the lock, does the work, adds the events it returns, and gives the lock back. */
    public void addAfter(LockedWork work) throws IOException {
        Files.createDirectories(file.getParent());
        try (FileChannel channel = FileChannel.open(
                        file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
                FileLock lock = channel.lock()) {
            List<RunEvent> events = work.run();
            String text = opening(channel) + lines(events);
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

    private static String opening(FileChannel channel) throws IOException {
        if (channel.size() == 0) {
            return line(RunEvent.HEADER);
        }
        ByteBuffer last = ByteBuffer.allocate(1);
        channel.read(last, channel.size() - 1);
        return last.get(0) == '\n' ? "" : "\n";
    }

    private static String lines(List<RunEvent> events) {
        StringBuilder text = new StringBuilder();
        events.forEach(event -> text.append(line(event.cells())));
        return text.toString();
    }

    private static String line(List<String> cells) {
        StringWriter text = new StringWriter();
        try {
            new TableWriter(text).row(cells);
        } catch (IOException e) {
            throw new UncheckedIOException("a string cannot fail to be written", e);
        }
        return text.toString();
    }
}
