package dev.quoin.cli;

/** The exit statuses; others' scripts rely on them. */
enum ExitStatus {
    /** Done, perhaps with warnings. */
    DONE(0),
    /** Errors in the user's files; nothing was written. */
    BAD_INPUT(1),
    /** The command line itself is wrong. */
    USAGE(2),
    /** Something could not be read or written. */
    ACCESS(3);

    private final int code;

    ExitStatus(int code) {
        this.code = code;
    }

    int code() {
        return code;
    }
}
