package dev.quoin.store;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;

/** Text in UTF-8 whose file is closed also where its last bytes find the disk full: Java 17 would leave it open. */
final class TextFile extends OutputStreamWriter {
    private final OutputStream file;

    TextFile(OutputStream file) {
        super(file, StandardCharsets.UTF_8);
        this.file = file;
    }

    @Override
    public void close() throws IOException {
        try {
            super.close();
        } finally {
            file.close();
        }
    }
}
