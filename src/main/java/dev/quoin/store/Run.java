package dev.quoin.store;

import dev.quoin.table.Table;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A prepared run, to be read: its tables, and its files as the manifests list them. It has a section for what was
 * prepared first (1), and one for each extension (2, 3 ...), whose files bear the section's number.
 */
public final class Run {
    private final Path folder;
    private final List<Manifest> manifests;

    private Run(Path folder, List<Manifest> manifests) {
        this.folder = folder;
        this.manifests = List.copyOf(manifests);
    }

    /**
     * Opens a run folder.
     *
     * @throws NoSuchFileException if there is none; its reason says so
     */
    public static Run open(Path folder) throws IOException {
        if (!Files.isRegularFile(folder.resolve(RunFolder.MANIFEST))) {
            throw new NoSuchFileException(
                    folder.toString(), null, "no run folder (it has no " + RunFolder.MANIFEST + "); check its name");
        }
        Path absolute = folder.toAbsolutePath().normalize();
        List<Manifest> manifests = new ArrayList<>();
        for (int section = 1; Files.isRegularFile(absolute.resolve(numbered(RunFolder.MANIFEST, section))); section++) {
            manifests.add(Manifest.read(absolute, numbered(RunFolder.MANIFEST, section)));
        }
        return new Run(absolute, manifests);
    }

    /** The name of a file or a folder of a section: {@code items.csv}, {@code items-2.csv}; {@code inputs-2/}. */
    public static String numbered(String name, int section) {
        if (section == 1) {
            return name;
        }
        int end = Math.max(name.lastIndexOf('.'), name.endsWith("/") ? name.length() - 1 : -1);
        int at = end < 0 ? name.length() : end;
        return name.substring(0, at) + "-" + section + name.substring(at);
    }

    public Path folder() {
        return folder;
    }

    public String name() {
        return folder.getFileName().toString();
    }

    /** How many sections it has; at least 1. */
    public int sections() {
        return manifests.size();
    }

    /** What each section lists, in their order. */
    public List<Manifest> manifests() {
        return manifests;
    }

    /** Whether a manifest lists a file. */
    public boolean has(String file) {
        return manifests.stream().anyMatch(manifest -> manifest.hashes().containsKey(file));
    }

    /** A table that a manifest lists, proven unchanged. */
    public Table table(String file) throws IOException {
        return Manifest.table(file, bytes(file));
    }

    /** A table of each section, proven unchanged: {@code items.csv}, {@code items-2.csv} ... */
    public List<Table> tables(String file) throws IOException {
        List<Table> tables = new ArrayList<>();
        for (int section = 1; section <= sections(); section++) {
            tables.add(table(numbered(file, section)));
        }
        return tables;
    }

    /**
     * The table of a reprint, proven unchanged.
     *
     * @param number of a reprint that is whole
     */
    public Table reprintTable(int number) throws IOException {
        String file = ReprintFolder.name(number, "csv");
        String expected =
                Manifest.read(folder, ReprintFolder.manifest(number)).hashes().getOrDefault(file, "");
        return Manifest.table(file, bytes(file, expected));
    }

    /**
     * The bytes of a file that a manifest lists.
     *
     * @throws IOException if it is missing, or no longer what the manifest says
     */
    public byte[] bytes(String file) throws IOException {
        String expected = manifests.stream()
                .flatMap(manifest -> Stream.ofNullable(manifest.hashes().get(file)))
                .findFirst()
                .orElse("");
        return bytes(file, expected);
    }

    private byte[] bytes(String file, String expected) throws IOException {
        Path path = folder.resolve(file);
        if (expected.isEmpty() || !Files.isRegularFile(path)) {
            throw new NoSuchFileException(path.toString(), null, "missing from the run; prepare it again");
        }
        byte[] bytes = Files.readAllBytes(path);
        if (!HexFormat.of().formatHex(HashedFile.sha256().digest(bytes)).equals(expected)) {
            throw new FileSystemException(
                    path.toString(), null, "changed since the run was prepared; restore it, or prepare the run again");
        }
        return bytes;
    }

    /** A file that a manifest lists, proven unchanged, as a stream. */
    public InputStream open(String file) throws IOException {
        return new ByteArrayInputStream(bytes(file));
    }

    /** The files that the manifests list in a folder, by their names in it. */
    public Map<String, byte[]> files(String prefix) throws IOException {
        Map<String, byte[]> found = new TreeMap<>();
        for (Manifest manifest : manifests) {
            for (String name : manifest.hashes().keySet()) {
                if (name.startsWith(prefix) && name.indexOf('/', prefix.length()) < 0) {
                    found.put(name.substring(prefix.length()), bytes(name));
                }
            }
        }
        return found;
    }
}
