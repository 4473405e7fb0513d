package dev.quoin.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;

/**
 * A file that is only added to, open and locked against other programs, and other threads of this one. It is its own lock, so
 * it is made where there is none; if it is still empty when it is closed, it is taken away, and so is its folder.
 */
final class LockedFile implements AutoCloseable {
    private static final long WAIT_NANOS = 5_000_000;

    private final Path file;
    private final FileChannel channel;
    private final FileLock lock;

    private LockedFile(Path file, FileChannel channel, FileLock lock) {
        this.file = file;
        this.channel = channel;
        this.lock = lock;
    }

    /** Waits for the lock. */
    static LockedFile of(Path file) throws IOException {
        while (true) {
            Optional<LockedFile> locked = take(file);
            if (locked.isPresent()) {
                return locked.get();
            }
        }
    }

    /** What the file holds. */
    byte[] content() throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate((int) channel.size());
        channel.position(0);
        while (bytes.hasRemaining() && channel.read(bytes) >= 0) {
            continue;
        }
        return bytes.array();
    }

    /** Adds to its end. */
    void add(byte[] content) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(content);
        channel.position(channel.size());
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
        channel.force(true);
        if (!lock.isValid()) {
            throw new IOException("the lock on " + file.getFileName() + " was lost");
        }
    }

    @Override
    public void close() throws IOException {
        try (channel) {
            if (channel.size() == 0) {
                takeAway();
            }
        }
    }

    private void takeAway() throws IOException {
        try {
            Files.deleteIfExists(file);
            Path folder = file.getParent();
            if (Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
                Files.deleteIfExists(folder);
            }
        } catch (FileSystemException otherFilesOrNotAllowed) {
            // An empty file or folder that stays does no harm.
            return;
        }
    }

    /** Nothing where the file that was waited for has been taken away by the one who had it. */
    private static Optional<LockedFile> take(Path file) throws IOException {
        Optional<Stamp> before = made(file);
        FileChannel channel;
        try {
            channel = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE);
        } catch (NoSuchFileException takenAway) {
            return Optional.empty();
        }
        try {
            FileLock lock = lock(channel);
            // Only an empty file is ever taken away, and an empty one was never changed.
            if (channel.size() > 0 || before.isPresent() && before.equals(Stamp.of(file))) {
                return Optional.of(new LockedFile(file, channel, lock));
            }
        } catch (IOException e) {
            channel.close();
            throw e;
        }
        channel.close();
        return Optional.empty();
    }

    private static Optional<Stamp> made(Path file) throws IOException {
        try {
            makeFolder(file.getParent());
            Files.createFile(file);
        } catch (FileAlreadyExistsException othersOrOld) {
            return Stamp.of(file);
        } catch (NoSuchFileException folderTakenAway) {
            return Optional.empty();
        }
        return Stamp.of(file);
    }

    private static void makeFolder(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            Files.createDirectory(folder);
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

    /** What tells a file from one that was made later under its name. */
    private record Stamp(Optional<Object> key, FileTime changed) {
        static Optional<Stamp> of(Path file) throws IOException {
            try {
                BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
                return Optional.of(new Stamp(Optional.ofNullable(attributes.fileKey()), attributes.lastModifiedTime()));
            } catch (NoSuchFileException none) {
                return Optional.empty();
            }
        }
    }
}
