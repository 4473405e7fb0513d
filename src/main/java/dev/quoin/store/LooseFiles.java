package dev.quoin.store;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;

/** Files that belong to no run. */
public final class LooseFiles {
    private LooseFiles() {}

    /**
     * Writes them: each under a hidden name beside its place, and into its place when all are whole.
     *
     * @param files the contents by their places
     * @param replace whether files that stand there may be replaced; folders never are
     * @throws FileAlreadyExistsException if one stands there that must not be; its reason says what to do
     */
    public static void write(Map<Path, byte[]> files, boolean replace) throws IOException {
        for (Path file : files.keySet()) {
            checkFree(file, replace);
        }
        Map<Path, Path> partials = new LinkedHashMap<>();
        try {
            for (Map.Entry<Path, byte[]> file : files.entrySet()) {
                Files.createDirectories(file.getKey().toAbsolutePath().getParent());
                Path partial = file.getKey()
                        .resolveSibling("." + file.getKey().getFileName() + ".partial-"
                                + ProcessHandle.current().pid());
                partials.put(partial, file.getKey());
                Files.write(partial, file.getValue());
            }
            for (Map.Entry<Path, Path> partial : partials.entrySet()) {
                Files.move(partial.getKey(), partial.getValue(), StandardCopyOption.ATOMIC_MOVE);
            }
        } finally {
            for (Path partial : partials.keySet()) {
                Files.deleteIfExists(partial);
            }
        }
    }

    private static void checkFree(Path file, boolean replace) throws FileAlreadyExistsException {
        if (Files.isDirectory(file)) {
            throw new FileAlreadyExistsException(
                    file.toString(), null, "a folder stands there; choose another with --out");
        }
        if (!replace && Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new FileAlreadyExistsException(
                    file.toString(), null, "it exists already; choose another with --out, or give --replace");
        }
    }
}
