package dev.quoin.store;

import dev.quoin.problem.Problems;
import dev.quoin.table.Table;
import dev.quoin.table.TableReader;
import dev.quoin.table.TableRow;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;

/** A prepared run, to be read: its tables, and its files as the manifest lists them. */
public final class Run {
    private final Path folder;
    private final Map<String, String> hashes = new HashMap<>();

    private Run(Path folder) {
        this.folder = folder;
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
        Run run = new Run(folder.toAbsolutePath().normalize());
        Table manifest = run.parse(RunFolder.MANIFEST, Files.readAllBytes(folder.resolve(RunFolder.MANIFEST)));
        for (TableRow row : manifest.rows()) {
            run.hashes.put(row.cells().get(0), row.cells().get(1));
        }
        return run;
    }

    public Path folder() {
        return folder;
    }

    public String name() {
        return folder.getFileName().toString();
    }

    /** A table that the manifest lists, proven unchanged. */
    public Table table(String file) throws IOException {
        return parse(file, bytes(file));
    }

    /**
     * The bytes of a file that the manifest lists.
     *
     * @throws IOException if it is missing, or no longer what the manifest says
     */
    public byte[] bytes(String file) throws IOException {
        Optional<String> expected = Optional.ofNullable(hashes.get(file));
        Path path = folder.resolve(file);
        if (expected.isEmpty() || !Files.isRegularFile(path)) {
            throw new NoSuchFileException(path.toString(), null, "missing from the run; prepare it again");
        }
        byte[] bytes = Files.readAllBytes(path);
        MessageDigest digest = HashedFile.sha256();
        if (!HexFormat.of().formatHex(digest.digest(bytes)).equals(expected.get())) {
            throw new FileSystemException(
                    path.toString(), null, "changed since the run was prepared; restore it, or prepare the run again");
        }
        return bytes;
    }

    /** A file that the manifest lists, proven unchanged, as a stream. */
    public InputStream open(String file) throws IOException {
        return new java.io.ByteArrayInputStream(bytes(file));
    }

    /** The files that the manifest lists in a folder, by their names in it. */
    public Map<String, byte[]> files(String prefix) throws IOException {
        Map<String, byte[]> found = new java.util.TreeMap<>();
        for (String name : hashes.keySet()) {
            if (name.startsWith(prefix) && name.indexOf('/', prefix.length()) < 0) {
                found.put(name.substring(prefix.length()), bytes(name));
            }
        }
        return found;
    }

    private Table parse(String file, byte[] bytes) throws IOException {
        Problems problems = new Problems();
        return TableReader.read(file, bytes, Optional.of(','), problems)
                .filter(table -> !problems.hasErrors())
                .orElseThrow(() -> new IOException(folder.resolve(file) + " is damaged: "
                        + problems.sorted().get(0)));
    }
}
