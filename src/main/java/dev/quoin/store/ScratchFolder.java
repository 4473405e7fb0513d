package dev.quoin.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** A folder for files that the program makes for itself; it goes when it is closed. */
public final class ScratchFolder implements AutoCloseable {
    private final Path folder;

    private ScratchFolder(Path folder) {
        this.folder = folder;
    }

    public static ScratchFolder create() throws IOException {
        return new ScratchFolder(Files.createTempDirectory("quoin-"));
    }

    public Path folder() {
        return folder;
    }

    /**
     * Writes a file.
     *
     * @param name relative, with {@code /} between folders
     */
    public void write(String name, byte[] content) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.write(file, content);
    }

    @Override
    public void close() throws IOException {
        try (Stream<Path> tree = Files.walk(folder)) {
            for (Path path : tree.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
