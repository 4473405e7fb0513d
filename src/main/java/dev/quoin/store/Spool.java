package dev.quoin.store;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Text that is put aside while a run is written, because what stands before it in its file is known only later. It is kept
 * in a hidden file, not in memory, and is gone when closed.
 */
public final class Spool implements AutoCloseable {
    private final Path file;
    private final Writer writer;

    Spool(Path file) throws IOException {
        this.file = file;
        this.writer = new BufferedWriter(new TextFile(Files.newOutputStream(file)));
    }

    /** Takes the text. */
    public Writer writer() {
        return writer;
    }

    /** Hands all of the text on; no more can be taken after that. */
    public void copyTo(Writer out) throws IOException {
        writer.close();
        try (Reader reader = Files.newBufferedReader(file)) {
            reader.transferTo(out);
        }
    }

    @Override
    public void close() throws IOException {
        writer.close();
        Files.deleteIfExists(file);
    }
}
