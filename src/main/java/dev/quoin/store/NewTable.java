package dev.quoin.store;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A table of the user's that is written whole or not at all, and never over another file. */
public final class NewTable {
    private NewTable() {}

    /**
     * Whether it could be written.
     *
     * @throws FileAlreadyExistsException if something stands there; its reason says what to do
     */
    public static void checkFree(Path file) throws FileAlreadyExistsException {
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new FileAlreadyExistsException(
                    file.toString(), null, "it exists already; choose another name with --out");
        }
    }

    /** Writes it. */
    public static void write(Path file, byte[] content) throws IOException {
        checkFree(file);
        Path folder = file.toAbsolutePath().getParent();
        Files.createDirectories(folder);
        Path partial = Files.createTempFile(folder, "." + file.getFileName() + ".", ".partial");
        try {
            Files.write(partial, content, StandardOpenOption.TRUNCATE_EXISTING);
            checkFree(file);
            Files.move(partial, file);
        } finally {
            Files.deleteIfExists(partial);
        }
    }
}
