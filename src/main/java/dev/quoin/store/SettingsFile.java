package dev.quoin.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** A table of the user's that the program changes: whole or not at all, and not while another program does. */
public final class SettingsFile {
    private SettingsFile() {}

    /** Makes the new content from the old; the same object back means no change. */
    @FunctionalInterface
    public interface Change {
        byte[] apply(byte[] content) throws IOException;
    }

    /** Changes the file under a lock. */
    public static void change(Path file, Change change) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE);
                FileLock lock = channel.lock()) {
            byte[] before = Files.readAllBytes(file);
            byte[] after = change.apply(before);
            if (after != before && lock.isValid()) {
                replace(file, after);
            }
        }
    }

    private static void replace(Path file, byte[] content) throws IOException {
        Path target = file.toRealPath();
        Path partial = target.resolveSibling("." + target.getFileName() + ".partial");
        try {
            Files.write(partial, content);
            Files.move(partial, target, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(partial);
        }
    }
}
