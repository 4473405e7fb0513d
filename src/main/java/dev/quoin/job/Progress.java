package dev.quoin.job;

/** Is told how far a long piece of work has come. */
public interface Progress {
    /** Tells no one. */
    Progress SILENT = (stage, done, total) -> {};

    /**
     * So much is done.
     *
     * @param stage what is being done, such as "merging"
     * @param done pieces done so far, up to {@code total}
     */
    void report(String stage, long done, long total);
}
