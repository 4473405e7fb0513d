package dev.quoin.store;

import java.io.IOException;
import java.nio.file.Path;

/** Where files are written until they are whole. */
interface StagingArea extends AutoCloseable {
    /** The folder to write them into. */
    Path folder();

    /** Puts them in their place. */
    void publish() throws IOException;

    /** Sweeps away what was not published. */
    @Override
    void close() throws IOException;
}
