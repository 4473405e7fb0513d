package dev.quoin.store;

import java.io.IOException;

/** A file of a run cannot be what Quoin wrote. */
public final class DamagedFileException extends IOException {
    private static final long serialVersionUID = 1L;

    private final String file;
    private final String reason;

    DamagedFileException(String file, String reason) {
        super(file + ": " + reason);
        this.file = file;
        this.reason = reason;
    }

    /** Its name, from the run folder. */
    public String file() {
        return file;
    }

    /** What is wrong with it. */
    public String reason() {
        return reason;
    }
}
