package dev.quoin.store;

import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.TreeMap;

/**
 * A run folder while it is made. It appears whole by {@link #publish}, or not at all: closed before that, or killed, it
 * leaves nothing where the run was to be. Files may be written from several threads, each by one.
 */
public final class RunFolder implements AutoCloseable {
    public static final String MANIFEST = "manifest.csv";

    private final StagingArea staging;
    private final String manifest;
    private final Map<String, String> hashes = new TreeMap<>();

    private RunFolder(StagingArea staging, String manifest) {
        this.staging = staging;
        this.manifest = manifest;
    }

    /**
     * Begins a run.
     *
     * @param out the folder that is to appear
     * @param replace whether a run that stands there may be replaced
     * @throws FileAlreadyExistsException if something stands there that must not be replaced; its reason says why
     */
    public static RunFolder begin(Path out, boolean replace) throws IOException {
        checkFree(out, replace);
        return new RunFolder(Staging.beside(out, replace), MANIFEST);
    }

    /**
     * Begins an extension of a run, under the lock of its record. Its files appear when it is published, each of them new,
     * and count once its manifest stands.
     *
     * @param section its number, from 2
     */
    public static RunFolder extend(Path run, int section) throws IOException {
        String manifest = Run.numbered(MANIFEST, section);
        return new RunFolder(ExtensionStaging.in(run, manifest), manifest);
    }

    /** Whether an extension is being written, or a kill left one. */
    public static boolean isBeingExtended(Path run) {
        return Files.isDirectory(run.resolve(ExtensionStaging.NAME));
    }

    /** Ends, or sweeps away, what a kill left of an extension; under the lock of the run's record. */
    public static void endExtension(Path run) throws IOException {
        ExtensionStaging.recover(run);
    }

    /** Whether a run could be written to {@code out}; see {@link #begin}. */
    public static void checkFree(Path out, boolean replace) throws FileAlreadyExistsException {
        if (!Files.exists(out, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        if (!replace) {
            throw new FileAlreadyExistsException(
                    out.toString(), null, "it exists already; choose another with --out, or give --replace");
        }
        if (!Files.isRegularFile(out.resolve(MANIFEST))) {
            throw new FileAlreadyExistsException(
                    out.toString(),
                    null,
                    "it is not a run folder, so --replace leaves it alone; choose another with --out");
        }
        if (new RunLog(out).exists() || Files.exists(out.resolve(ReprintFolder.NAME))) {
            throw new FileAlreadyExistsException(
                    out.toString(),
                    null,
                    "it has a record of work done, which --replace would lose; choose another with --out");
        }
    }

    /**
     * A new file of the run.
     *
     * @param name relative, with {@code /} between folders
     */
    public OutputStream create(String name) throws IOException {
        Path file = staging.folder().resolve(name).normalize();
        if (!file.startsWith(staging.folder())) {
            throw new IllegalArgumentException("outside the run folder: " + name);
        }
        Files.createDirectories(file.getParent());
        return HashedFile.around(
                Files.newOutputStream(file, java.nio.file.StandardOpenOption.CREATE_NEW), hash -> listed(name, hash));
    }

    /** A new text file of the run, UTF-8. */
    public Writer createText(String name) throws IOException {
        return new TextFile(create(name));
    }

    /** Text to be put aside; must be closed before the run is published. */
    public Spool spool() throws IOException {
        return new Spool(staging.folder().resolve(".spool"));
    }

    /** Writes the manifest and puts the folder in its place. */
    public void publish() throws IOException {
        Path whole = staging.folder().resolve(manifest);
        Path partial = staging.folder().resolve(".manifest.partial");
        Files.writeString(partial, Manifest.text(hashes));
        Files.move(partial, whole, StandardCopyOption.ATOMIC_MOVE);
        staging.publish();
    }

    @Override
    public void close() throws IOException {
        staging.close();
    }

    private synchronized void listed(String name, String hash) {
        hashes.put(name, hash);
    }
}
