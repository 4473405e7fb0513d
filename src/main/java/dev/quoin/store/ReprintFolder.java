package dev.quoin.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.stream.Stream;

/** The reprints of a run: numbered files that come after what the manifest lists. Used under the lock of {@link RunLog}. */
public final class ReprintFolder {
    private static final String NAME = "reprints";

    private final Path folder;

    public ReprintFolder(Path run) {
        this.folder = run.resolve(NAME);
    }

    /** The number after the last. */
    public int next() throws IOException {
        if (!Files.isDirectory(folder)) {
            return 1;
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                            .filter(name -> name.matches("reprint-\\d+\\..*"))
                            .mapToInt(name -> Integer.parseInt(
                                    name.replaceAll("\\D+", " ").strip()))
                            .max()
                            .orElse(0)
                    + 1;
        }
    }

    /** {@code reprints/reprint-001.svg}. */
    public static String name(int number, String extension) {
        return NAME + String.format(Locale.ROOT, "/reprint-%03d.", number) + extension;
    }

    /** Writes a file whole or not at all. */
    public void write(int number, String extension, byte[] content) throws IOException {
        Files.createDirectories(folder);
        Path file = folder.resolveSibling(name(number, extension));
        Path partial = file.resolveSibling("." + file.getFileName() + ".partial");
        try {
            Files.write(partial, content);
            Files.move(partial, file, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(partial);
        }
    }
}
