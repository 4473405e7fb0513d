package dev.quoin.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A hidden folder beside the run folder to be, in which the run is written until it is whole. A lock in it shows that its
 * program still works; one without (left by a kill) is swept away by the next run of the same name.
 */
final class Staging implements StagingArea {
    private static final String LOCK = ".lock";

    private final Path out;
    private final boolean replace;
    private final Path folder;
    private final List<Path> madeParents;
    private final FileChannel lock;
    private boolean published;

    private Staging(Path out, boolean replace, Path folder, List<Path> madeParents, FileChannel lock) {
        this.out = out;
        this.replace = replace;
        this.folder = folder;
        this.madeParents = madeParents;
        this.lock = lock;
    }

    static Staging beside(Path out, boolean replace) throws IOException {
        Path target = out.toAbsolutePath().normalize();
        List<Path> made = makeParents(target);
        try {
            restore(target);
            sweep(target);
            // Not a temporary directory of the platform: that would be closed to all other users.
            Path folder = target.resolveSibling(
                    prefix(target) + "partial-" + ProcessHandle.current().pid());
            Files.createDirectory(folder);
            return new Staging(target, replace, folder, made, lock(folder));
        } catch (IOException e) {
            removeMade(made);
            throw e;
        }
    }

    private static FileChannel lock(Path folder) throws IOException {
        try {
            FileChannel channel =
                    FileChannel.open(folder.resolve(LOCK), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            channel.lock();
            return channel;
        } catch (IOException e) {
            removeTree(folder);
            throw e;
        }
    }

    @Override
    public Path folder() {
        return folder;
    }

    /**
     * Puts the finished folder in its place, in one move; what stood there before goes, if it still may: another program
     * can have made a run there, or begun its record, since this one began.
     */
    @Override
    public void publish() throws IOException {
        RunFolder.checkFree(out, replace);
        lock.close();
        Files.delete(folder.resolve(LOCK));
        Path old = out.resolveSibling(prefix(out) + "replaced");
        boolean replaces = replace && Files.exists(out, LinkOption.NOFOLLOW_LINKS);
        if (replaces) {
            Files.move(out, old, StandardCopyOption.ATOMIC_MOVE);
        }
        Files.move(folder, out, StandardCopyOption.ATOMIC_MOVE);
        published = true;
        if (replaces) {
            removeTree(old);
        }
    }

    @Override
    public void close() throws IOException {
        if (!published) {
            lock.close();
            removeTree(folder);
            restore(out);
            removeMade(madeParents);
        }
    }

    /** If a kill came between the two moves of {@link #publish}, the old run is put back. */
    private static void restore(Path out) throws IOException {
        Path old = out.resolveSibling(prefix(out) + "replaced");
        if (!Files.exists(old)) {
            return;
        }
        if (Files.exists(out)) {
            removeTree(old);
        } else {
            Files.move(old, out, StandardCopyOption.ATOMIC_MOVE);
        }
    }

    private static void sweep(Path out) throws IOException {
        try (DirectoryStream<Path> stale = Files.newDirectoryStream(
                out.getParent(), path -> path.getFileName().toString().startsWith(prefix(out) + "partial-"))) {
            for (Path path : stale) {
                if (isAbandoned(path)) {
                    removeTree(path);
                }
            }
        }
    }

    private static boolean isAbandoned(Path folder) {
        Path file = folder.resolve(LOCK);
        if (!Files.exists(file)) {
            return isOfNoProgram(folder);
        }
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
                FileLock held = channel.tryLock()) {
            return held != null;
        } catch (IOException | OverlappingFileLockException inUse) {
            return false;
        }
    }

    /** A kill may come before the lock is made, or after it is taken away; then the number in the name tells. */
    private static boolean isOfNoProgram(Path folder) {
        String name = folder.getFileName().toString();
        String pid = name.substring(name.lastIndexOf('-') + 1);
        if (!pid.matches("\\d{1,18}")) {
            return false;
        }
        long number = Long.parseLong(pid);
        return number == ProcessHandle.current().pid()
                || !ProcessHandle.of(number).map(ProcessHandle::isAlive).orElse(false);
    }

    private static String prefix(Path out) {
        return "." + out.getFileName() + ".";
    }

    private static List<Path> makeParents(Path out) throws IOException {
        List<Path> missing = Stream.iterate(out.getParent(), path -> path != null, Path::getParent)
                .takeWhile(path -> !Files.exists(path))
                .toList();
        Path existing = missing.isEmpty()
                ? out.getParent()
                : missing.get(missing.size() - 1).getParent();
        if (!Files.isDirectory(existing)) {
            throw new FileSystemException(
                    existing.toString(), null, "a file, where a folder is to hold the run; choose another with --out");
        }
        if (!missing.isEmpty()) {
            Files.createDirectories(missing.get(0));
        }
        return missing;
    }

    private static void removeMade(List<Path> made) throws IOException {
        for (Path path : made) {
            try {
                Files.deleteIfExists(path);
            } catch (java.nio.file.DirectoryNotEmptyException otherUse) {
                return;
            }
        }
    }

    static void removeTree(Path folder) throws IOException {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try (Stream<Path> tree = Files.walk(folder)) {
            for (Path path : tree.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
