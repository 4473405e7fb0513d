package dev.quoin.store;

import java.io.BufferedOutputStream;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * A single file, of text (UTF-8) or of bytes, that appears whole by {@link #publish}, or not at all: until then it is written to a hidden
 * file beside its place.
 */
public final class NewFile implements AutoCloseable {
    private final Path out;
    private final Path partial;
    private final OutputStream stream;
    private final Writer writer;
    private boolean published;

    private NewFile(Path out, Path partial, OutputStream stream) {
        this.out = out;
        this.partial = partial;
        this.stream = stream;
        this.writer = new BufferedWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8));
    }

    /**
     * Begins a file.
     *
     * @param replace whether a file that stands there may be replaced
     * @throws FileAlreadyExistsException if something stands there that must not be replaced; its reason says why
     */
    public static NewFile begin(Path out, boolean replace) throws IOException {
        checkFree(out, replace);
        Path target = out.toAbsolutePath().normalize();
        Files.createDirectories(target.getParent());
        Path partial = target.resolveSibling("." + target.getFileName() + ".partial-"
                + ProcessHandle.current().pid());
        return new NewFile(target, partial, new BufferedOutputStream(Files.newOutputStream(partial)));
    }

    /** Whether a file could be written to {@code out}; see {@link #begin}. */
    public static void checkFree(Path out, boolean replace) throws FileAlreadyExistsException {
        if (Files.isDirectory(out)) {
            throw new FileAlreadyExistsException(out.toString(), null, "it is a folder; name a file with --out");
        }
        if (!replace && Files.exists(out, LinkOption.NOFOLLOW_LINKS)) {
            throw new FileAlreadyExistsException(
                    out.toString(), null, "it exists already; choose another with --out, or give --replace");
        }
    }

    /** Takes bytes, where the file is not of text; not to be used beside {@link #writer}. */
    public OutputStream stream() {
        return stream;
    }

    /** Takes the text. */
    public Writer writer() {
        return writer;
    }

    /** Puts the finished file in its place, in one move. */
    public void publish() throws IOException {
        writer.close();
        Files.move(partial, out, StandardCopyOption.ATOMIC_MOVE);
        published = true;
    }

    @Override
    public void close() throws IOException {
        if (!published) {
            writer.close();
            Files.deleteIfExists(partial);
        }
    }
}
